#include "wasm/app/parts.hpp"

#include "wasm/app/form_fields.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using timeline::Whereabouts;

constexpr const char* search_id = "parts-search";
constexpr const char* which_id = "parts-which";

}  // namespace

std::vector<PartOffer> offered(Whereabouts whereabouts) {
    const PartOffer fit{FormKind::part_fit, "part-fit", {Word::button_part_fit, {}}};
    const PartOffer off{FormKind::part_remove, "part-remove", {Word::button_part_remove, {}}};
    const PartOffer move{FormKind::part_move, "part-move", {Word::button_part_move, {}}};
    const PartOffer work{FormKind::part_work, "part-work", {Word::button_part_work, {}}};
    const PartOffer rebuild{
        FormKind::part_rebuild, "part-rebuild", {Word::button_part_rebuild, {}}};
    const PartOffer scrap{FormKind::part_scrap, "part-scrap", {Word::button_part_scrap, {}}};
    const PartOffer item{FormKind::new_item, "part-item", {Word::button_new_item, {}}};
    const PartOffer directive{FormKind::directive, "part-directive", {Word::button_directive, {}}};
    switch (whereabouts) {
        case Whereabouts::fitted:
            return {off, work, item, directive, rebuild};
        case Whereabouts::shelf:
        case Whereabouts::lent:
            return {fit, move, work, item, directive, rebuild, scrap};
        case Whereabouts::scrapped:
            break;
    }
    return {};
}

Form make_parts_form(const std::string& registration) {
    Form form;
    form.fields = {
        make_field(search_id, Word::parts_search, FieldKind::search, {}, Need::optional)};
    if (registration.empty()) return form;
    FieldView which = make_choice(which_id, Word::parts_which, {}, 0);
    which.options = {{Word::parts_here, {base::text_arg(registration)}},
                     {Word::parts_everywhere, {}}};
    form.fields.push_back(std::move(which));
    return form;
}

PartsPage parts_page(Form& form, base::Id aircraft, const FormContext& context) {
    FieldReader reader{form};
    views::PartsAsked asked;
    asked.search = reader.text(search_id);
    asked.everywhere = aircraft.empty() || reader.choice(which_id) == 1;
    std::map<base::Id, std::string> registrations;
    for (const auto& [id, each] : *context.fleet)
        registrations.emplace(id, each.state.registration);
    return {views::make_part_list(*context.parts, registrations, aircraft, asked), form.fields};
}

PartPage part_page(const timeline::PartState& part, const FormContext& context) {
    return {views::part_history(context.journal, part, context.today), offered(part.whereabouts)};
}

}  // namespace twoclocks::canvas
