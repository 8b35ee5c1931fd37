# First settings of a build to work with, warnings are errors: cmake -G Ninja -B build-dev -C resources/cmake/dev.cmake
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(SHEERLAY_WERROR ON CACHE BOOL "")
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "")
