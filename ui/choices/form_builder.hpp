#pragma once

#include "core/project/project.hpp"
#include "ui/choices/choice_form.hpp"
#include "ui/scene/wording.hpp"

#include <QString>
#include <QStringList>

#include <cmath>
#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sheerlay::ui {

inline constexpr double mostRows = 1000; ///< far beyond any boat

/// Makes fields of the members of one struct of the project.
/// `of` finds the struct in a project; it is only called while the project has it.
template <class Part> class FormBuilder {
public:
    using Of = std::function<Part&(core::Project&)>;
    using Kind = ChoiceField::Kind;

    explicit FormBuilder(Of of) : m_of(std::move(of)) {}

    FormBuilder& length(double Part::*member, const QString& label, const QString& meaning) {
        return number(Kind::Length, member, label, meaning);
    }
    FormBuilder& length(std::optional<double> Part::*member,
                        const QString& label,
                        const QString& leftOut,
                        const QString& meaning) {
        return number(Kind::Length, member, label, leftOut, meaning);
    }
    FormBuilder& number(Kind kind, double Part::*member, const QString& label, const QString& meaning) {
        return scaled(kind, member, 1.0, label, meaning);
    }
    /// @param scale  what is shown for one of what the project holds: 100 for a part shown in percent
    FormBuilder&
    scaled(Kind kind, double Part::*member, double scale, const QString& label, const QString& meaning) {
        add(
            kind,
            label,
            meaning,
            {},
            [member, scale](const Part& part) -> ChoiceValue { return part.*member * scale; },
            [member, scale](Part& part, const ChoiceValue& value) {
                part.*member = std::get<double>(value) / scale;
            });
        return *this;
    }
    FormBuilder& number(Kind kind,
                        std::optional<double> Part::*member,
                        const QString& label,
                        const QString& leftOut,
                        const QString& meaning) {
        return optional(kind, member, label, leftOut, meaning);
    }
    FormBuilder& count(int Part::*member, const QString& label, const QString& meaning) {
        add(
            Kind::Count,
            label,
            meaning,
            {},
            [member](const Part& part) -> ChoiceValue { return static_cast<double>(part.*member); },
            [member](Part& part, const ChoiceValue& value) {
                part.*member = static_cast<int>(std::get<double>(value));
            });
        return *this;
    }
    /// A row: whole, negative above the start.
    FormBuilder& row(int Part::*member, const QString& label, const QString& meaning) {
        return field(
            {Kind::Number, label, meaning, {}, {}, {}, {}},
            [member](const Part& part) -> ChoiceValue { return static_cast<double>(part.*member); },
            [member](Part& part, const ChoiceValue& value) {
                const double row = std::get<double>(value);
                if (row != std::floor(row) || std::abs(row) > mostRows)
                    return Wording::tr("a number that no row has; a whole number would do.");
                part.*member = static_cast<int>(row);
                return QString();
            });
    }
    FormBuilder& count(std::optional<int> Part::*member,
                       const QString& label,
                       const QString& leftOut,
                       const QString& meaning) {
        return optional(Kind::Count, member, label, leftOut, meaning);
    }
    /// @param words  in the order of the enumeration; "no" before "yes" of a bool
    template <class E>
    FormBuilder&
    oneOf(E Part::*member, const QString& label, const QStringList& words, const QString& meaning) {
        add(
            Kind::OneOf,
            label,
            meaning,
            {},
            [member](const Part& part) -> ChoiceValue {
                return static_cast<double>(static_cast<int>(part.*member));
            },
            [member](Part& part, const ChoiceValue& value) {
                part.*member = static_cast<E>(static_cast<int>(std::get<double>(value)));
            });
        m_fields.back().oneOf = words;
        return *this;
    }
    FormBuilder& words(std::string Part::*member, const QString& label, const QString& meaning) {
        add(
            Kind::Words,
            label,
            meaning,
            {},
            [member](const Part& part) -> ChoiceValue { return QString::fromStdString(part.*member); },
            [member](Part& part, const ChoiceValue& value) {
                part.*member = std::get<QString>(value).toStdString();
            });
        return *this;
    }
    /// A field whose getting and putting is all its own.
    FormBuilder& field(ChoiceField made,
                       std::function<ChoiceValue(const Part&)> get,
                       std::function<QString(Part&, const ChoiceValue&)> put) {
        made.get = [of = m_of, get = std::move(get)](const core::Project& project) {
            return get(partOf(of, project));
        };
        made.put = [of = m_of, put = std::move(put)](core::Project& project, const ChoiceValue& value) {
            return put(of(project), value);
        };
        m_fields.push_back(std::move(made));
        return *this;
    }

    [[nodiscard]] std::vector<ChoiceField> fields() const { return m_fields; }

private:
    template <class T>
    FormBuilder& optional(Kind kind,
                          std::optional<T> Part::*member,
                          const QString& label,
                          const QString& leftOut,
                          const QString& meaning) {
        add(
            kind,
            label,
            meaning,
            leftOut,
            [member](const Part& part) -> ChoiceValue {
                return part.*member ? ChoiceValue(static_cast<double>(*(part.*member))) : ChoiceValue();
            },
            [member](Part& part, const ChoiceValue& value) {
                const auto* given = std::get_if<double>(&value);
                part.*member = given != nullptr ? std::optional(static_cast<T>(*given)) : std::nullopt;
            });
        return *this;
    }
    void add(Kind kind,
             const QString& label,
             const QString& meaning,
             const QString& leftOut,
             std::function<ChoiceValue(const Part&)> get,
             std::function<void(Part&, const ChoiceValue&)> put) {
        field({kind, label, meaning, leftOut, {}, {}, {}},
              std::move(get),
              [put = std::move(put)](Part& part, const ChoiceValue& value) {
                  put(part, value);
                  return QString();
              });
    }
    /// `of` finds a part that may be changed; here it is only read.
    static const Part& partOf(const Of& of, const core::Project& project) {
        return of(const_cast<core::Project&>(project));
    }

    Of m_of;
    std::vector<ChoiceField> m_fields;
};

/// The woods' names as a project writes them, and as they are called.
[[nodiscard]] ChoiceField woodField(const QString& meaning);
[[nodiscard]] double woodIndex(const std::string& id);
[[nodiscard]] std::string woodAt(const ChoiceValue& index);

/// A field for the wood that `member` names.
template <class Part>
FormBuilder<Part>& addWood(FormBuilder<Part>& form, std::string Part::*member, const QString& meaning) {
    return form.field(
        woodField(meaning),
        [member](const Part& part) -> ChoiceValue { return woodIndex(part.*member); },
        [member](Part& part, const ChoiceValue& value) {
            part.*member = woodAt(value);
            return QString();
        });
}

/// Takes one of a list out of the project. @param of  finds the list
template <class Of> std::function<void(core::Project&)> removeAt(Of of, std::size_t index) {
    return [of, index](core::Project& project) {
        auto& all = of(project);
        all.erase(all.begin() + static_cast<std::ptrdiff_t>(index));
    };
}

/// Two lists of fields one behind the other.
[[nodiscard]] std::vector<ChoiceField> joined(std::vector<ChoiceField> first,
                                              std::vector<ChoiceField> second);

/// x of the middle of the table, mm, in its own datum: where something new stands at first.
[[nodiscard]] double middleOf(const core::Project& project);

} // namespace sheerlay::ui
