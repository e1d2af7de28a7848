// The way through a type template: from the aircraft just added to its last part.
#include "wasm/app/form_template.hpp"
#include "wasm/app/inside.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

[[nodiscard]] std::string text_in(Form& form, std::string_view id) {
    const FieldView* field = find_field(form, id);
    return field == nullptr ? std::string{} : field->text;
}

void set_text(Form& form, std::string_view id, std::string text) {
    if (FieldView* field = find_field(form, id)) field->text = std::move(text);
}

/// Asks for a part of a template; an unchosen one leaves the first.
void ask_for(Form& form,
             const FormContext& context,
             std::int32_t chosen,
             const std::optional<TemplatePart>& part) {
    FieldView* field = find_field(form, "template");
    if (field == nullptr) return;
    field->chosen = chosen;
    reshape(form, context);
    FieldView* parts = find_field(form, "part");
    if (parts == nullptr || !part) return;
    const auto place = std::find(parts->options.begin(), parts->options.end(), title_of(*part));
    if (place == parts->options.end()) return;
    parts->chosen = static_cast<std::int32_t>(place - parts->options.begin());
    reshape(form, context);
}

}  // namespace

/// After an aircraft was added: its page, and before it what its documents say, when it was started
/// from a template. What was chosen is a draft from then on, so it outlives a reload.
void AppState::Inside::start_template(base::Id aircraft) {
    const bool from_form = here().kind == Place::Kind::form && form.kind == FormKind::new_aircraft;
    const bool chose = from_form && chosen_template(form) != nullptr;
    const std::int32_t chosen = chose ? find_field(form, "template")->chosen : 0;
    lead_to_aircraft(aircraft);
    if (!chose) return;
    std::vector<Notice> said = std::exchange(notices, {});
    open({Place::Kind::form, aircraft});
    notices = std::move(said);
    open_form(FormKind::from_template, aircraft);
    ask_for(form, context_of(form.aircraft), chosen, std::nullopt);
}

/// After a part was saved: the next one with the same document, or back after the last.
void AppState::Inside::lead_on_template() {
    if (here().kind != Place::Kind::form || form.kind != FormKind::from_template) return;
    const facts::TypeTemplate* type = chosen_template(form);
    const FormContext context = context_of(form.aircraft);
    if (type == nullptr || context.aircraft == nullptr) return host.go_back();
    const std::optional<TemplatePart> done = part_asked(form);
    const std::optional<TemplatePart> next =
        done ? part_after(*type, *context.aircraft, *done) : std::nullopt;
    if (!next) return host.go_back();
    const std::int32_t chosen = find_field(form, "template")->chosen;
    const std::string source = text_in(form, "source");
    const std::string revision = text_in(form, "revision");
    form = make_form(FormKind::from_template, form.subject, context);
    entry.fresh = form;
    entry.note = {base::Word::blank, {}};
    ask_for(form, context, chosen, next);
    set_text(form, "source", source);
    set_text(form, "revision", revision);
}

}  // namespace twoclocks::canvas
