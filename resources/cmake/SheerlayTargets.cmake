# The one way our targets are made: a static library per folder, warnings private to us, each header able to stand alone.

find_program(SHEERLAY_CCACHE ccache)
if(SHEERLAY_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
    # paths inside the checkout don't count, so a second checkout finds what the first one compiled
    set(CMAKE_CXX_COMPILER_LAUNCHER env "CCACHE_BASEDIR=${PROJECT_SOURCE_DIR}" CCACHE_NOHASHDIR=1 "${SHEERLAY_CCACHE}")
endif()
find_program(SHEERLAY_LLD NAMES ld.lld)
if(SHEERLAY_LLD)
    add_link_options(-fuse-ld=lld)
endif()

add_library(sheerlay_flags INTERFACE)
target_compile_options(sheerlay_flags INTERFACE
    -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wold-style-cast -Wnon-virtual-dtor -Woverloaded-virtual
    $<$<BOOL:${SHEERLAY_WERROR}>:-Werror>)
target_compile_definitions(sheerlay_flags INTERFACE QT_NO_KEYWORDS QT_NO_CAST_FROM_ASCII)
# Address and undefined behaviour sanitizers for the folders added after it.
macro(sheerlay_sanitize)
    # GCC 12 sees uninitialised members in std::regex as soon as a sanitizer is on; the sanitizers look for the real ones.
    add_compile_options(-fsanitize=address,undefined -fno-omit-frame-pointer -Wno-maybe-uninitialized)
    add_link_options(-fsanitize=address,undefined)
endmacro()
if(SHEERLAY_SANITIZE)
    sheerlay_sanitize()
endif()

if(SHEERLAY_FUZZ)
    if(NOT CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
        message(FATAL_ERROR "SHEERLAY_FUZZ needs clang: cmake -D CMAKE_CXX_COMPILER=clang++ -D SHEERLAY_FUZZ=ON …")
    endif()
    add_compile_options(-fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=undefined -fno-omit-frame-pointer)
    add_link_options(-fsanitize=address,undefined)
endif()

# Headers without a source file of their own name. The others are compiled first in theirs (.clang-format keeps them
# there), which proves that they stand alone; only these have to be compiled by themselves.
function(sheerlay_lone_headers result headers sources)
    set(lone ${headers})
    foreach(source IN LISTS sources)
        string(REGEX REPLACE "\\.cpp$" ".hpp" header "${source}")
        list(REMOVE_ITEM lone "${header}")
    endforeach()
    set(${result} ${lone} PARENT_SCOPE)
endfunction()

# sheerlay_library(core_units FOLDER core/units HEADERS a.hpp SOURCES a.cpp PUBLIC sheerlay::x PRIVATE spdlog::spdlog)
# makes target core_units with alias sheerlay::core_units; headers are included as "core/units/a.hpp".
function(sheerlay_library name)
    cmake_parse_arguments(ARG "" "" "HEADERS;SOURCES;PUBLIC;PRIVATE" ${ARGN})
    add_library(${name} STATIC)
    add_library(sheerlay::${name} ALIAS ${name})
    sheerlay_lone_headers(lone "${ARG_HEADERS}" "${ARG_SOURCES}")
    list(REMOVE_ITEM ARG_HEADERS ${lone})
    target_sources(${name}
        PUBLIC FILE_SET HEADERS BASE_DIRS "${PROJECT_SOURCE_DIR}" FILES ${ARG_HEADERS}
        PUBLIC FILE_SET lone TYPE HEADERS BASE_DIRS "${PROJECT_SOURCE_DIR}" FILES ${lone}
        PRIVATE ${ARG_SOURCES})
    if(lone)
        set_target_properties(${name} PROPERTIES INTERFACE_HEADER_SETS_TO_VERIFY lone VERIFY_INTERFACE_HEADER_SETS ON)
    endif()
    target_compile_features(${name} PUBLIC cxx_std_20)
    target_link_libraries(${name} PUBLIC ${ARG_PUBLIC} PRIVATE ${ARG_PRIVATE} sheerlay_flags)
    set_target_properties(${name} PROPERTIES LINKER_LANGUAGE CXX POSITION_INDEPENDENT_CODE ON)
endfunction()
