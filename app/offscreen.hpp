#pragma once

#include <array>
#include <memory>

class QGuiApplication;

namespace sheerlay::app {

/// Qt as a command that paints needs it: without a display, quiet, file names in UTF-8. One per run.
class Offscreen {
public:
    Offscreen();
    ~Offscreen();
    Offscreen(const Offscreen&) = delete;
    Offscreen& operator=(const Offscreen&) = delete;

private:
    std::array<char, 9> m_name{"sheerlay"};
    std::array<char*, 2> m_arguments{m_name.data(), nullptr};
    int m_count = 1;
    std::unique_ptr<QGuiApplication> m_application;
};

} // namespace sheerlay::app
