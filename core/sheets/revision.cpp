#include "core/sheets/revision.hpp"

#include "core/project/laid_strips.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <map>
#include <optional>
#include <set>
#include <sstream>
#include <stdexcept>

namespace sheerlay::core {

namespace {

constexpr const char* heading = "sheerlay-sheets 1 revision ";

/// FNV-1a, 64 bits. Source: http://www.isthe.com/chongo/tech/comp/fnv/, from memory.
class Print {
public:
    void take(const std::string& text) {
        for (const char c : text) {
            m_value ^= static_cast<unsigned char>(c);
            m_value *= 0x100000001b3ULL;
        }
        m_value ^= 0xffU; // so that "ab" "c" and "a" "bc" differ
        m_value *= 0x100000001b3ULL;
    }
    void take(double millimetres) { take(std::to_string(std::lround(millimetres * 1000.0))); }
    void take(const Eigen::Vector2d& p) {
        take(p.x());
        take(p.y());
    }
    void take(Colour colour) { take(std::to_string(colour.red * 65536 + colour.green * 256 + colour.blue)); }
    [[nodiscard]] std::string text() const {
        char buffer[17];
        std::snprintf(buffer, sizeof buffer, "%016llx", static_cast<unsigned long long>(m_value));
        return buffer;
    }

private:
    std::uint64_t m_value = 0xcbf29ce484222325ULL;
};

bool isPageNumber(const Text& text) {
    return text.runs.size() == 1 && isSaid(text.runs.front().text, "page {} of {}");
}

std::string printOf(const Sheet& sheet) {
    Print print;
    print.take(sheet.width);
    print.take(sheet.height);
    for (const Item& item : sheet.items) {
        if (const auto* text = std::get_if<Text>(&item)) {
            // the boat's name stands left of the page number, and moves as that grows wider
            if (isPageNumber(*text))
                continue;
            for (const TextRun& run : text->runs)
                print.take(run.text);
            print.take(text->size);
            if (text->anchor != Anchor::Right)
                print.take(text->at);
            continue;
        }
        const Path& path = std::get<Path>(item);
        for (const Eigen::Vector2d& p : path.points)
            print.take(p);
        print.take(static_cast<double>(path.line));
        print.take(path.fill.value_or(path.colour));
    }
    return print.text();
}

} // namespace

DoneSheets doneSheets(const std::vector<Sheet>& sheets, const Journal& journal, const Plan& plan) {
    int lastRead = 0;
    for (const RowReading& reading : journal.readings)
        lastRead = std::max(lastRead, reading.row);
    std::set<std::string> laid;
    for (const Strip& strip : plan.strips)
        if ((strip.row > 0 && strip.row <= lastRead) || laidEntry(journal, strip.id) != nullptr)
            laid.insert(strip.id);
    DoneSheets done;
    for (const Sheet& sheet : sheets) { // "S07 P07", or of several rows "S07 P07, S08 P08"
        std::string names = sheet.title;
        std::ranges::replace(names, ',', ' ');
        std::istringstream words(names);
        std::string id;
        bool all = !names.empty();
        while (words >> id)
            all = all && laid.contains(id);
        done.push_back(all);
    }
    return done;
}

SheetRecord recordOf(const std::vector<Sheet>& sheets, const SheetRecord& before, const DoneSheets& done) {
    if (!done.empty() && done.size() != sheets.size())
        throw std::invalid_argument("what is done is told of other sheets");
    std::map<std::string, const SheetRecord::Entry*> known;
    for (const SheetRecord::Entry& entry : before.entries)
        known[entry.title] = &entry;
    SheetRecord record;
    std::map<std::string, int> times;
    bool same = before.revision > 0 && sheets.size() == before.entries.size();
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const Sheet& sheet = sheets[i];
        const int time = ++times[sheet.title];
        SheetRecord::Entry entry;
        entry.title = sheet.title + (time > 1 ? "#" + std::to_string(time) : "");
        entry.print = printOf(sheet);
        const auto found = known.find(entry.title);
        if (found != known.end() && !done.empty() && done[i])
            entry.print = found->second->print;
        const bool kept = found != known.end() && found->second->print == entry.print;
        entry.since = kept ? found->second->since : before.revision + 1;
        same = same && kept;
        record.entries.push_back(std::move(entry));
    }
    record.revision = same ? before.revision : before.revision + 1;
    return record;
}

std::vector<Sheet> withRevisions(std::vector<Sheet> sheets, const SheetRecord& record, PageSize size) {
    if (sheets.size() != record.entries.size())
        throw std::invalid_argument("the record is of other sheets");
    const Page page = pageOf(size);
    const Box room = roomOf(page);
    const double type = 1.2 * typeSize::small * page.scale;
    for (std::size_t i = 0; i < sheets.size(); ++i)
        if (record.entries[i].since > 1)
            sheets[i].items.emplace_back(
                makeText({room.right, room.bottom + 5.4 * page.scale},
                         say("revision {}", record.entries[i].since),
                         {.size = type, .weight = Weight::Bold, .anchor = Anchor::Right}));
    return sheets;
}

std::vector<std::size_t> changedIn(const SheetRecord& record) {
    std::vector<std::size_t> changed;
    for (std::size_t i = 0; i < record.entries.size() && record.revision > 1; ++i)
        if (record.entries[i].since == record.revision)
            changed.push_back(i);
    return changed;
}

Finding recordLost(const std::string& name) {
    return {
        Level::Caution,
        "print-record-lost",
        std::nullopt,
        std::nullopt,
        say("The record of the cut sheets written before, {}, is gone or spoilt, so every sheet counts as "
            "new and bears no revision: take the earlier sheets off the wall before you pin these up.",
            name)};
}

std::string toText(const SheetRecord& record) {
    std::string text = heading + std::to_string(record.revision) + "\n";
    for (const SheetRecord::Entry& entry : record.entries)
        text += entry.print + " " + std::to_string(entry.since) + " " + entry.title + "\n";
    return text;
}

SheetRecord recordFrom(const std::string& text) {
    std::istringstream lines(text);
    std::string line;
    SheetRecord record;
    if (!std::getline(lines, line) || !line.starts_with(heading) ||
        std::sscanf(line.c_str() + std::string(heading).size(), "%d", &record.revision) != 1 ||
        record.revision < 1)
        return {};
    while (std::getline(lines, line)) {
        std::istringstream words(line);
        SheetRecord::Entry entry;
        if (!(words >> entry.print >> entry.since) || words.get() != ' ' || entry.since < 1 ||
            entry.since > record.revision || !std::getline(words, entry.title))
            return {};
        record.entries.push_back(std::move(entry));
    }
    return record;
}

} // namespace sheerlay::core
