#pragma once

#include <atomic>
#include <cstddef>
#include <thread>
#include <vector>

namespace sheerlay::core {

/// Runs fn(0) … fn(n - 1) on a few threads, the caller's own among them; the results must not depend on the
/// order.
template <class F> void parallelFor(std::size_t n, unsigned threads, F fn) {
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < n; i = next++)
            fn(i);
    };
    std::vector<std::jthread> pool;
    for (unsigned t = 1; t < threads && t < n; ++t)
        pool.emplace_back(work);
    work();
}

} // namespace sheerlay::core
