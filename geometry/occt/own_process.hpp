#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <string>

namespace sheerlay::geometry {

/// Does some work in a process of its own, a copy of this one without its other threads, and hands back the
/// bytes it made: for libraries that a broken file can bring down. What the work prints is dropped.
/// @param seconds  after which it is given up
/// @param stop     ends it at once
/// @return  the bytes, or none where the work crashed, threw, took too long or was stopped
[[nodiscard]] std::optional<std::string>
inOwnProcess(const std::function<std::string()>& work, unsigned seconds, std::stop_token stop = {});

} // namespace sheerlay::geometry
