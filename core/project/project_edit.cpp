#include "core/project/project_edit.hpp"

#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "core/words/say.hpp"

namespace sheerlay::core {

Expected<Project, std::vector<FileMessage>> checked(const Project& project) {
    if (auto read = parseProject(writeProject(project), ""); !read)
        return unexpected(read.error());
    return project;
}

namespace {

std::string startName(StartLine::Kind kind) {
    switch (kind) {
    case StartLine::Kind::Sheer:
        return say("Start along the sheer");
    case StartLine::Kind::Geodesic:
        return say("Start on an unbent line");
    case StartLine::Kind::Bent:
        return say("Start on a bent line");
    case StartLine::Kind::Knuckle:
        return say("Start at the knuckle");
    case StartLine::Kind::Easiest:
        break;
    }
    return say("Start where it is easiest");
}

std::string taperName(Taper taper) {
    return taper == Taper::None   ? say("No taper")
           : taper == Taper::Ends ? say("Taper toward the ends")
                                  : say("Taper anywhere");
}

std::string closingName(ClosingMethod method) {
    switch (method) {
    case ClosingMethod::BothSides:
        return say("Close both sides together");
    case ClosingMethod::RunOver:
        return say("Close by running over");
    case ClosingMethod::Herringbone:
        return say("Close in herringbone");
    case ClosingMethod::SplitBottom:
        break;
    }
    return say("Close with a split bottom");
}

} // namespace

std::string nameOfChange(const Planking& before, const Planking& after) {
    std::string name;
    int changes = 0;
    const auto note = [&](bool changed, std::string what) {
        if (!changed)
            return;
        name = std::move(what);
        ++changes;
    };
    const bool sameLine = before.start.kind == after.start.kind;
    note(!(before.start == after.start), sameLine ? say("Move the start") : startName(after.start.kind));
    note(before.layOn != after.layOn, say("Where cover width counts"));
    note(before.edgeBendRadius != after.edgeBendRadius, say("Limit of edge bend"));
    note(before.narrowest != after.narrowest, say("Narrowest strip"));
    note(before.taper != after.taper, taperName(after.taper));
    note(before.accents != after.accents, say("Rows that stand out"));
    note(before.bowEnds != after.bowEnds, say("Strip ends at the bow"));
    note(before.sternEnds != after.sternEnds, say("Strip ends at the stern"));
    note(before.closing != after.closing, closingName(after.closing));
    note(before.shutter != after.shutter, say("Width of the last plank"));
    return changes > 1 ? say("Planking") : name;
}

Project carryOver(const Project& base, const Project& mine, const Project& theirs) {
    Project both = theirs;
    const auto take = [&](auto Planking::*member) {
        if (!(mine.planking.*member == base.planking.*member))
            both.planking.*member = mine.planking.*member;
    };
    take(&Planking::layOn);
    take(&Planking::start);
    take(&Planking::edgeBendRadius);
    take(&Planking::narrowest);
    take(&Planking::taper);
    take(&Planking::accents);
    take(&Planking::bowEnds);
    take(&Planking::sternEnds);
    take(&Planking::closing);
    take(&Planking::shutter);
    const auto takePart = [&](auto Project::*part) {
        if (!(mine.*part == base.*part))
            both.*part = mine.*part;
    };
    takePart(&Project::language);
    takePart(&Project::paper);
    takePart(&Project::hull);
    takePart(&Project::strips);
    takePart(&Project::moulds);
    takePart(&Project::stock);
    takePart(&Project::fitout);
    takePart(&Project::covering);
    takePart(&Project::afloat);
    takePart(&Project::journal);
    takePart(&Project::putAside);
    return both;
}

} // namespace sheerlay::core
