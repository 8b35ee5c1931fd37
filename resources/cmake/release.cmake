# First settings of a build to use: cmake -G Ninja -B build-release -C resources/cmake/release.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "")
