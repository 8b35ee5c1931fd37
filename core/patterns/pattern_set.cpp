#include "core/patterns/pattern_set.hpp"

#include "core/patterns/fitout_pattern.hpp"
#include "core/patterns/mould_pattern.hpp"
#include "core/patterns/pattern_pages.hpp"
#include "core/patterns/strip_pattern.hpp"
#include "core/words/say.hpp"

#include <utility>

namespace sheerlay::core {

namespace {

template <class PageFor>
std::vector<Sheet>
allPages(const std::vector<Pattern>& patterns, const std::string& boat, const PageFor& pageFor) {
    std::vector<Sheet> sheets;
    for (const Pattern& pattern : patterns)
        for (PatternPage& page : pagesOf(pattern, pageFor(pattern), boat))
            sheets.push_back(std::move(page.sheet));
    return sheets;
}

} // namespace

Expected<PatternSet, std::string> patternSet(const Project& project,
                                             const LoftedHull& hull,
                                             const Plan& plan,
                                             Units units,
                                             const std::optional<Fitout>& fitout) {
    auto frame = mouldsOf(project, hull);
    if (!frame)
        return unexpected(frame.error());
    const Speaking speaking(project.language);
    PatternSet set;
    set.frame = std::move(frame).value();
    set.moulds = mouldPatterns(project, set.frame, units);
    set.strips = stripPatterns(project, hull, plan, units);
    if (fitout)
        set.parts = fitoutPatterns(*fitout, units);
    set.boards = nestMoulds(set.frame, project.moulds);
    const Speaking english(Language::English); // findings are kept in it
    set.findings = nestingFindings(set.boards, units);
    return set;
}

Finding withoutMoulds(const std::string& why) {
    return {Level::Stop,
            "no-moulds",
            std::nullopt,
            std::nullopt,
            say("Moulds and strongback are left out: {}.", why)};
}

std::vector<Sheet> tiledPages(const std::vector<Pattern>& patterns, PageSize size, const std::string& boat) {
    return allPages(patterns, boat, [page = pageOf(size)](const Pattern&) { return page; });
}

std::vector<Sheet> rollPages(const std::vector<Pattern>& patterns, const std::string& boat) {
    return allPages(patterns, boat, rollPageFor);
}

} // namespace sheerlay::core
