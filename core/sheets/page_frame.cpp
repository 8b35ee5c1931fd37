#include "core/sheets/page_frame.hpp"

#include "core/sheets/strip_notes.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>

namespace sheerlay::core {

namespace {

constexpr double footHeight = 15.0; // mm at scale 1

} // namespace

Box roomOf(const Page& page) noexcept {
    return {
        pageMargin, pageMargin, page.width - pageMargin, page.height - pageMargin - footHeight * page.scale};
}

Sheet blankSheet(const Page& page, std::string title) {
    Sheet sheet;
    sheet.width = page.width;
    sheet.height = page.height;
    sheet.title = std::move(title);
    return sheet;
}

std::vector<Item> scaleBar(const Eigen::Vector2d& at, Units units, double small) {
    const bool metric = units == Units::Millimetres;
    const double length = metric ? 100.0 : 4 * mmPerInch;
    std::vector<Item> items{makeLine(at, at + Eigen::Vector2d(length, 0.0), LineKind::Thin)};
    const int parts = metric ? 10 : 8;
    for (int i = 0; i <= parts; ++i) {
        const double x = at.x() + length * i / parts;
        const double tall = i % (parts / 2) == 0 ? 2.5 : 1.3;
        items.emplace_back(makeLine({x, at.y()}, {x, at.y() - tall}, LineKind::Thin));
    }
    const std::string label = metric ? say("100 mm at full size") : say("4 in at full size");
    items.emplace_back(makeText({at.x() + length + 2.0, at.y()}, label, {.size = small}));
    return items;
}

void addFeet(std::vector<Sheet>& sheets, const Project& project, Units units, const Page& page) {
    const double small = typeSize::small * page.scale, pitch = 1.35 * small;
    const double left = pageMargin, right = page.width - pageMargin, bottom = page.height - pageMargin;
    // what withRevisions puts at the right of the cautions
    const double markRoom = textWidth(say("revision {}", 88), 1.2 * small, Weight::Bold) + 2.0;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        std::vector<Item>& items = sheets[i].items;
        double baseline = bottom - (footHeight - 2.0) * page.scale + small;
        items.emplace_back(makeLine({left, baseline - 1.4 * small},
                                    {right, baseline - 1.4 * small},
                                    LineKind::Thin,
                                    colours::pencil));
        for (const std::string& caution : cautionsFor(project)) {
            const double size = sizeToFit(caution, right - left - markRoom, small);
            items.emplace_back(makeText({left, baseline}, caution, {.size = size}));
            baseline += pitch;
        }
        const Eigen::Vector2d barAt(left + 0.2, bottom - 0.3);
        const std::vector<Item> bar = scaleBar(barAt, units, small);
        const double barEnd = inkBox(std::get<Text>(bar.back())).right;
        items.insert(items.end(), bar.begin(), bar.end());
        const std::string number = say("page {} of {}", i + 1, sheets.size());
        const double numberWidth = textWidth(number, small, Weight::SemiBold);
        items.emplace_back(makeText({right, bottom - 0.3},
                                    number,
                                    {.size = small, .weight = Weight::SemiBold, .anchor = Anchor::Right}));
        const double nameRight = right - numberWidth - 3.0;
        items.emplace_back(makeText({nameRight, bottom - 0.3},
                                    shortened(project.name, nameRight - barEnd - 3.0, small),
                                    {.size = small, .anchor = Anchor::Right}));
    }
}

} // namespace sheerlay::core
