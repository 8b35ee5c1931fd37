#include "core/outlines/drawn_sections.hpp"
#include "tests/fuzz/corrections_first.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    sheerlay::test::readCorrected(data, size, sheerlay::core::readSections);
    return 0;
}
