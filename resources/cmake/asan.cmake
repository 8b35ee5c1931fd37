# First settings of a build with address and undefined behaviour sanitizers: cmake -G Ninja -B build-asan -C resources/cmake/asan.cmake
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g" CACHE STRING "")
set(SHEERLAY_WERROR ON CACHE BOOL "")
set(SHEERLAY_SANITIZE ON CACHE BOOL "")
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "")
