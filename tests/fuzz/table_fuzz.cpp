#include "core/offsets/table_project.hpp"
#include "tests/fuzz/corrections_first.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    sheerlay::test::readCorrected(data, size, sheerlay::core::readTable);
    return 0;
}
