#include "core/stock/stock_findings.hpp"

#include "core/stock/stock_job.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/both_units.hpp"

#include <cmath>

namespace sheerlay::core {

namespace {

/// mm, in steps of the grid; the whole strip where it may not be joined.
double leastPiece(const CuttingProblem& problem, const CutUnit& unit) {
    return std::ceil(leastLongestPiece(problem, unit) / problem.grid) * problem.grid;
}

} // namespace

Finding noBoardsOf(const std::string& wood, std::size_t units) {
    return {Level::Stop,
            "stock-no-boards",
            std::nullopt,
            std::nullopt,
            "No boards of " + spoken(wood) + " are described that give strips, and " + std::to_string(units) +
                " rows or pieces need it; a [[stock.lot]] of it would do."};
}

Finding scarfAgainstRule(const std::string& strip,
                         RuleKept rules,
                         const CuttingProblem& problem,
                         const CutUnit& byTheRules,
                         double endTrim) {
    const bool nib = rules == RuleKept::NotNibs;
    const double need = leastPiece(problem, byTheRules);
    const std::string shop = need > problem.longestPiece
                                 ? "a longest-piece of " + bothUnits(need) + " and boards of "
                                 : "boards of ";
    return {Level::Caution,
            nib ? "stock-scarf-at-nib" : "stock-scarf-in-bend",
            strip,
            std::nullopt,
            "From these boards " + strip + " can be made only with a scarf " +
                (nib ? "beside the end of a stealer" : "where it is bent or twisted hardest") + "; " + shop +
                bothUnits(need + 2 * endTrim) + " would do without, or " +
                (nib ? "let the glue of the scarf set before the notch is cut."
                     : "bend it dry before it is glued.")};
}

Finding
boardsTooShort(const std::string& strip, const CuttingProblem& problem, const CutUnit& unit, double endTrim) {
    const double need = leastPiece(problem, unit);
    const std::string shop =
        need > problem.longestPiece ? "a longest-piece of that, and boards of " : "boards of ";
    return {Level::Stop,
            "stock-boards-too-short",
            strip,
            std::nullopt,
            strip +
                " can't be made from these boards: its scarfs belong in the middle third of a mould bay, "
                "and then its longest piece is " +
                bothUnits(need) + " at best; " + shop + bothUnits(need + 2 * endTrim) + " would do."};
}

Finding scarfsSideBySide(const std::string& strip) {
    return {Level::Caution,
            "stock-scarfs-side-by-side",
            strip,
            std::nullopt,
            "A scarf of " + strip +
                " lies in the same mould bay as one of the row beside it; longer boards would keep them "
                "apart."};
}

} // namespace sheerlay::core
