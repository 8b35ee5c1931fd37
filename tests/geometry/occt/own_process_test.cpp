#include "geometry/occt/own_process.hpp"
#include "tests/support/catch.hpp"

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <stdexcept>
#include <thread>

using sheerlay::geometry::inOwnProcess;

TEST_CASE("bytes come back as they were made, many of them too") {
    CHECK(inOwnProcess([] { return std::string("a\0b", 3); }, 60) == std::string("a\0b", 3));
    CHECK(inOwnProcess([] { return std::string(); }, 60) == std::string());
    const std::string many(5'000'000, 'x');
    CHECK(inOwnProcess([&] { return many; }, 60) == many);
}

TEST_CASE("a work that crashes, throws or never ends gives none") {
    CHECK_FALSE(inOwnProcess(
        []() -> std::string {
            std::raise(SIGSEGV);
            return "?";
        },
        60));
    CHECK_FALSE(inOwnProcess([]() -> std::string { std::abort(); }, 60));
    CHECK_FALSE(inOwnProcess([]() -> std::string { throw std::runtime_error("no"); }, 60));
    CHECK_FALSE(inOwnProcess(
        []() -> std::string {
            std::this_thread::sleep_for(std::chrono::seconds(30));
            return "late";
        },
        1));
}

TEST_CASE("a work is ended when it is asked to stop") {
    std::stop_source stop;
    const auto begin = std::chrono::steady_clock::now();
    std::jthread asker([&] {
        std::this_thread::sleep_for(std::chrono::milliseconds(100));
        stop.request_stop();
    });
    CHECK_FALSE(inOwnProcess(
        []() -> std::string {
            std::this_thread::sleep_for(std::chrono::seconds(30));
            return "late";
        },
        60,
        stop.get_token()));
    CHECK(std::chrono::steady_clock::now() - begin < std::chrono::seconds(20));
}
