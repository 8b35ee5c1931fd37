# First settings of a build whose window is watched by the sanitizers: cmake -G Ninja -B build-asan-ui -C resources/cmake/asan-ui.cmake
# Core and geometry are compiled as released (asan.cmake watches those), so that the window's tests keep their pace.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(SHEERLAY_SANITIZE_UI ON CACHE BOOL "")
set(SHEERLAY_BENCH OFF CACHE BOOL "")
