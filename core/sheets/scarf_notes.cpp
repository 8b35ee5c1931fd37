#include "core/sheets/scarf_notes.hpp"

#include "core/stock/joint_places.hpp"
#include "core/stock/stock_words.hpp"
#include "core/words/say.hpp"

#include <algorithm>

namespace sheerlay::core {

namespace {

const StockStrip* find(const StockPlan* stock, const std::string& strip) {
    if (stock == nullptr)
        return nullptr;
    const auto found = std::ranges::find(stock->strips, strip, &StockStrip::strip);
    return found == stock->strips.end() || found->pieces.empty() ? nullptr : &*found;
}

std::string pieces(const StockStrip& strip, Units units) {
    std::string text;
    for (std::size_t i = 0; i < strip.pieces.size(); ++i) {
        const StockPiece& piece = strip.pieces[i];
        text += (i == 0 ? "" : ", ") + piece.stick + " (" + pieceText(piece.toCut, units) + ")";
    }
    return say("{} from {}.", strip.strip, text);
}

std::string joints(const StockStrip& made, const Strip& strip, const Places& places, Units units) {
    std::string text;
    for (std::size_t i = 0; i < made.joints.size(); ++i)
        text += (i == 0 ? "" : "; ") + say("{} from the bow cut, {}",
                                           placeText(made.joints[i].along + bowAllowance(strip), units),
                                           places.at(made.joints[i].x));
    return made.joints.size() == 1 ? say("Scarf {}.", text) : say("Scarfs {}.", text);
}

} // namespace

std::vector<double> scarfsOf(const StockPlan* stock, const std::string& strip) {
    std::vector<double> places;
    if (const StockStrip* made = find(stock, strip))
        for (const StripJoint& joint : made->joints)
            places.push_back(joint.along);
    return places;
}

std::optional<Note> scarfNote(const Piece& piece, const StockPlan* stock, const Places& places, Units units) {
    const StockStrip* made = find(stock, piece.strip->id);
    if (made == nullptr)
        return std::nullopt;
    const StockStrip* image = piece.mirror != nullptr ? find(stock, piece.mirror->id) : nullptr;
    Note note;
    note.heading = made->joints.empty() ? say("In one piece") : say("Pieces, bow first");
    note.paragraphs.push_back(pieces(*made, units));
    if (image != nullptr)
        note.paragraphs.push_back(pieces(*image, units));
    const auto bays = [](const StockStrip& strip) {
        std::vector<int> list;
        for (const StripJoint& joint : strip.joints)
            list.push_back(joint.bay);
        return list;
    };
    if (!made->joints.empty())
        note.paragraphs.push_back(joints(*made, *piece.strip, places, units));
    if (image != nullptr && !image->joints.empty() && bays(*image) != bays(*made))
        note.paragraphs.push_back(
            say("On {}: {}", piece.mirror->id, joints(*image, *piece.mirror, places, units)));
    return note;
}

} // namespace sheerlay::core
