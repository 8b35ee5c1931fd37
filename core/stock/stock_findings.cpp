#include "core/stock/stock_findings.hpp"

#include "core/stock/stock_job.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <cmath>

namespace sheerlay::core {

namespace {

/// mm, in steps of the grid; the whole strip where it may not be joined.
double leastPiece(const CuttingProblem& problem, const CutUnit& unit) {
    return std::ceil(leastLongestPiece(problem, unit) / problem.grid) * problem.grid;
}

} // namespace

Finding noBoardsOf(const std::string& wood, std::size_t units) {
    return {
        Level::Stop,
        "stock-no-boards",
        std::nullopt,
        std::nullopt,
        say("No boards of {} are described that give strips, and {} rows or pieces need it; a [[stock.lot]] "
            "of it would do.",
            spoken(wood),
            units)};
}

Finding scarfAgainstRule(const std::string& strip,
                         RuleKept rules,
                         const CuttingProblem& problem,
                         const CutUnit& byTheRules,
                         double endTrim) {
    const bool nib = rules == RuleKept::NotNibs;
    const double need = leastPiece(problem, byTheRules);
    const std::string boards = bothUnits(need + 2 * endTrim);
    const std::string shop = need > problem.longestPiece
                                 ? say("a longest-piece of {} and boards of {}", bothUnits(need), boards)
                                 : say("boards of {}", boards);
    return {Level::Caution,
            nib ? "stock-scarf-at-nib" : "stock-scarf-in-bend",
            strip,
            std::nullopt,
            nib ? say("From these boards {} can be made only with a scarf beside the end of a stealer; {} "
                      "would do "
                      "without, or let the glue of the scarf set before the notch is cut.",
                      strip,
                      shop)
                : say("From these boards {} can be made only with a scarf where it is bent or twisted "
                      "hardest; {} "
                      "would do without, or bend it dry before it is glued.",
                      strip,
                      shop)};
}

Finding
boardsTooShort(const std::string& strip, const CuttingProblem& problem, const CutUnit& unit, double endTrim) {
    const double need = leastPiece(problem, unit);
    const std::string boards = bothUnits(need + 2 * endTrim);
    const std::string shop = need > problem.longestPiece
                                 ? say("a longest-piece of that, and boards of {}", boards)
                                 : say("boards of {}", boards);
    return {
        Level::Stop,
        "stock-boards-too-short",
        strip,
        std::nullopt,
        say("{} can't be made from these boards: its scarfs belong in the middle third of a mould bay, and "
            "then its longest piece is {} at best; {} would do.",
            strip,
            bothUnits(need),
            shop)};
}

Finding scarfsSideBySide(const std::string& strip) {
    return {
        Level::Caution,
        "stock-scarfs-side-by-side",
        strip,
        std::nullopt,
        say("A scarf of {} lies in the same mould bay as one of the row beside it; longer boards would keep "
            "them apart.",
            strip)};
}

} // namespace sheerlay::core
