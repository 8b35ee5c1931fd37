#include "core/outlines/dxf_entities.hpp"

#include "core/units/length_text.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <utility>

namespace sheerlay::core {

namespace {

Expected<std::vector<DxfPair>, FileMessage> pairsOf(std::string_view text, const std::string& file) {
    std::vector<DxfPair> pairs;
    int line = 0;
    const auto next = [&] {
        const auto end = text.find('\n');
        std::string taken = trimmed(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        ++line;
        return taken;
    };
    while (!text.empty()) {
        const std::string code = next();
        if (code.empty() && text.empty())
            break; // an empty line at the end
        if (code.empty() || code.size() > 5 || code.find_first_not_of("-0123456789") != std::string::npos)
            return unexpected(FileMessage{file,
                                          line,
                                          "file",
                                          quoted(code) + " where a group code should be",
                                          "a DXF file saved as text (ASCII)"});
        DxfPair pair{static_cast<int>(std::strtol(code.c_str(), nullptr, 10)), "", line + 1};
        pair.value = next();
        pairs.push_back(std::move(pair));
    }
    return pairs;
}

/// Millimetres to the unit of $INSUNITS; none for 0 and what no boat is drawn in.
std::optional<double> unitOf(int insunits) {
    switch (insunits) {
    case 1:
        return 25.4;
    case 2:
        return 304.8;
    case 4:
        return 1.0;
    case 5:
        return 10.0;
    case 6:
        return 1000.0;
    default:
        return std::nullopt;
    }
}

/// A layer that was off (a negative colour) or frozen when the drawing was saved.
bool isHidden(const DxfEntity& layer) {
    constexpr int frozen = 1;
    return layer.first(62) < 0.0 || (layer.flags() & frozen) != 0;
}

/// Sorts the entities into sections and blocks.
class Sorter {
public:
    void take(DxfEntity entity) {
        if (entity.name == "SECTION" && !entity.pairs.empty()) {
            m_section = entity.pairs.front().value;
            for (std::size_t k = 0; k + 1 < entity.pairs.size(); ++k)
                if (entity.pairs[k].code == 9 && entity.pairs[k].value == "$INSUNITS")
                    made.millimetres =
                        unitOf(static_cast<int>(std::clamp(entity.pairs[k + 1].number(), 0.0, 99.0)));
        } else if (entity.name == "ENDSEC") {
            m_section.clear();
        } else if (m_section == "TABLES" && entity.name == "LAYER") {
            if (isHidden(entity))
                made.hidden.insert(entity.text(2));
        } else if (m_section == "BLOCKS") {
            if (entity.name == "BLOCK")
                m_block = &(made.blocks[entity.text(2)] = {entity.point(10), {}});
            else if (entity.name == "ENDBLK")
                m_block = nullptr;
            else if (m_block != nullptr)
                m_block->entities.push_back(std::move(entity));
        } else if (m_section == "ENTITIES") {
            made.entities.push_back(std::move(entity));
        }
    }

    DxfFile made;

private:
    std::string m_section;
    DxfBlock* m_block = nullptr;
};

} // namespace

double DxfPair::number() const {
    const double read = std::strtod(value.c_str(), nullptr);
    return std::isfinite(read) ? read : 0.0;
}

double DxfEntity::first(int code, double otherwise) const {
    const auto found = std::ranges::find(pairs, code, &DxfPair::code);
    return found == pairs.end() ? otherwise : found->number();
}

std::string DxfEntity::text(int code) const {
    const auto found = std::ranges::find(pairs, code, &DxfPair::code);
    return found == pairs.end() ? std::string() : found->value;
}

int DxfEntity::flags() const {
    return static_cast<int>(std::clamp(first(70), 0.0, 255.0));
}

Expected<DxfFile, FileMessage> dxfEntities(std::string_view text, const std::string& file) {
    if (text.find('\0') != std::string_view::npos)
        return unexpected(
            FileMessage{file, 0, "file", "a binary drawing", "a DXF file saved as text (ASCII)"});
    const auto pairs = pairsOf(text, file);
    if (!pairs)
        return unexpected(pairs.error());
    Sorter sorter;
    for (std::size_t i = 0; i < pairs->size();) {
        const DxfPair& pair = (*pairs)[i++];
        if (pair.code != 0)
            continue;
        DxfEntity entity{pair.value, {}, pair.line};
        for (; i < pairs->size() && (*pairs)[i].code != 0; ++i)
            entity.pairs.push_back((*pairs)[i]);
        sorter.take(std::move(entity));
    }
    return std::move(sorter.made);
}

} // namespace sheerlay::core
