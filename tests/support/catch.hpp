#pragma once

// Debian 12 ships Catch2 2.13; everything the tests need from it comes through here, so that version 3
// changes one file.
#include <catch2/catch.hpp>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
