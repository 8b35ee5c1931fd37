#pragma once

#include <cstdio>
#include <cstdlib>

namespace sheerlay::test {

/// Stops the run where what a reader promises does not hold, in every kind of build.
inline void promise(bool held, const char* what) {
    if (held)
        return;
    std::fprintf(stderr, "broken promise: %s\n", what);
    std::abort();
}

} // namespace sheerlay::test
