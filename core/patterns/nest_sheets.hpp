#pragma once

#include "core/moulds/mould_set.hpp"
#include "core/patterns/nesting.hpp"
#include "core/patterns/pattern.hpp"
#include "core/sheets/page.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// A part to be sawn from sheet goods.
struct SawnPart {
    std::string name;
    std::vector<Eigen::Vector2d> outline; ///< closed, mm
};

/// Moulds and stem forms as they are sawn: a mould whole, both sides in one; one that stands against a stem
/// form as two halves.
[[nodiscard]] std::vector<SawnPart> sawnParts(const MouldSet& set);

/// Parts laid on sheets of plywood or another board without grain, with their names.
struct NestedBoards {
    std::vector<SawnPart> parts;
    SheetGoods goods;
    Nesting nesting;

    /// Size of a sheet of the nesting.
    [[nodiscard]] const SheetSize& sizeOf(std::size_t sheet) const {
        return goods.sizes[nesting.sheets[sheet].size];
    }
};

/// On the sheets of [moulds].
[[nodiscard]] NestedBoards nestMoulds(const MouldSet& set, const MouldChoices& choices);

/// Parts that no sheet holds, and parts for which none was left: cautions with the sheets that would do.
/// @param units  of sizes
[[nodiscard]] std::vector<Finding> nestingFindings(const NestedBoards& boards, Units units);

/// One pattern a sheet at true scale, for the saw: outlines to cut, names, the sheet's edge as a mark.
[[nodiscard]] std::vector<Pattern> nestedPatterns(const NestedBoards& boards);

/// The sheets drawn small, several on a page: how many are needed and what is sawn from which. Feet and page
/// numbers included.
[[nodiscard]] std::vector<Sheet>
nestedPages(const Project& project, const NestedBoards& boards, Units units, PageSize size);

} // namespace sheerlay::core
