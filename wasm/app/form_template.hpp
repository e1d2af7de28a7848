// What a form knows of type templates: which one was chosen, and what of it is not on record yet.
#pragma once

#include "wasm/app/form.hpp"

#include <utility>

#include "engine/facts/type_template.hpp"

namespace twoclocks::canvas {

/// A stretch of a template that one page asks for.
struct TemplatePart {
    enum class Kind : std::uint8_t { chapter, all, works } kind{Kind::chapter};
    std::string chapter;

    bool operator==(const TemplatePart& other) const {
        return kind == other.kind && chapter == other.chapter;
    }
};

/// The field that chooses a template, none chosen.
[[nodiscard]] FieldView template_field();

/// The template chosen in a form, null for none.
[[nodiscard]] const facts::TypeTemplate* chosen_template(Form& form);

/// Its item of role overhaul, null when it has none.
[[nodiscard]] const facts::TemplateItem* overhaul_of(const facts::TypeTemplate& type);

/// Its items that the aircraft has by name, and its overhaul, each under the aircraft's id.
[[nodiscard]] std::vector<std::pair<std::string, base::Id>> on_record(
    const facts::TypeTemplate& type, const timeline::AircraftState& aircraft);

/// What is left to take over, in the order of the template.
[[nodiscard]] std::vector<TemplatePart> parts_left(const facts::TypeTemplate& type,
                                                   const timeline::AircraftState& aircraft);

/// The items of a part that are not on record, and the works that are not, or not as a whole.
[[nodiscard]] std::vector<const facts::TemplateItem*> items_left(
    const facts::TypeTemplate& type,
    const timeline::AircraftState& aircraft,
    const TemplatePart& part);
[[nodiscard]] std::vector<const facts::TemplateWork*> works_left(
    const facts::TypeTemplate& type, const timeline::AircraftState& aircraft);

/// The part that a form asks for.
[[nodiscard]] std::optional<TemplatePart> part_asked(Form& form);

/// After a part was saved: the next one, none when this was the last.
[[nodiscard]] std::optional<TemplatePart> part_after(const facts::TypeTemplate& type,
                                                     const timeline::AircraftState& aircraft,
                                                     const TemplatePart& done);

/// What a part is called in the list of parts.
[[nodiscard]] base::Message title_of(const TemplatePart& part);

/// Everything a limit says, a line each.
[[nodiscard]] std::vector<base::Message> limit_lines(const facts::LimitSet& limit);

/// Puts a field of the same name back as it was left; a choice by what its option says.
void keep_entry(FieldView& fresh, const std::vector<FieldView>& before);

}  // namespace twoclocks::canvas
