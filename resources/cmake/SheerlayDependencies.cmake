# Every library comes from a Debian 12 package; app/run and tests/run install what is missing.

find_package(Eigen3 3.4 REQUIRED NO_MODULE)
find_package(Threads REQUIRED)
find_package(spdlog REQUIRED)
find_package(nlohmann_json REQUIRED)
find_package(tomlplusplus REQUIRED)
find_package(pugixml 1.13 REQUIRED)

# linear programs: Debian's coinor-libclp-dev, which comes with a pkg-config file only
find_package(PkgConfig REQUIRED)
pkg_check_modules(CLP REQUIRED IMPORTED_TARGET clp)
add_library(sheerlay_clp INTERFACE)
target_include_directories(sheerlay_clp SYSTEM INTERFACE ${CLP_INCLUDE_DIRS})
target_link_libraries(sheerlay_clp INTERFACE ${CLP_LINK_LIBRARIES})
add_library(sheerlay::clp ALIAS sheerlay_clp)

# an outside judge of geodesic distances, for slow tests and a benchmark only: Debian's libcgal-dev
if(SHEERLAY_SLOW AND BUILD_TESTING)
    set(CGAL_DO_NOT_WARN_ABOUT_CMAKE_BUILD_TYPE TRUE)
    find_package(CGAL 5.5 QUIET)
endif()

if(SHEERLAY_UI)
    find_package(CLI11 REQUIRED)
    find_package(Qt6 6.4 REQUIRED COMPONENTS Widgets OpenGL OpenGLWidgets PrintSupport Svg Concurrent Test LinguistTools)

    # Debian's OpenCASCADE: the version file only accepts the exact version, the targets name libtbb by absolute path
    # and carry no include directory. All three are mended here, once.
    find_package(OpenCASCADE CONFIG REQUIRED)
    foreach(target IN LISTS OpenCASCADE_LIBRARIES)
        if(TARGET ${target})
            get_target_property(links ${target} INTERFACE_LINK_LIBRARIES)
            if(links)
                list(FILTER links EXCLUDE REGEX "libtbb|stdc\\+\\+")
                set_target_properties(${target} PROPERTIES INTERFACE_LINK_LIBRARIES "${links}")
            endif()
            set_target_properties(${target} PROPERTIES
                INTERFACE_INCLUDE_DIRECTORIES "${OpenCASCADE_INCLUDE_DIR}"
                MAP_IMPORTED_CONFIG_DEBUG RelWithDebInfo
                MAP_IMPORTED_CONFIG_RELEASE RelWithDebInfo)
        endif()
    endforeach()
endif()
