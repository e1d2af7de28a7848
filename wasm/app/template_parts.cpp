// What of a type template is not on record yet, stretch by stretch.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_template.hpp"
#include "wasm/app/shipped_templates.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/views/record.hpp"
#include "engine/views/record_limit.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;
using facts::TemplateItem;
using facts::TemplateWork;
using facts::TypeTemplate;
using timeline::AircraftState;
using OnRecord = std::vector<std::pair<std::string, base::Id>>;

[[nodiscard]] bool has(const OnRecord& record, const std::string& key) {
    return std::any_of(
        record.begin(), record.end(), [&](const auto& each) { return each.first == key; });
}

[[nodiscard]] base::Id id_on(const AircraftState& aircraft, const TemplateItem& item) {
    const bool overhauls = item.item.role == facts::ItemRole::overhaul;
    for (const timeline::ItemState& each : aircraft.items) {
        if (each.name == item.item.name) return each.id;
        if (overhauls && each.role == facts::ItemRole::overhaul) return each.id;
    }
    return {};
}

/// The rule of that name renews everything on record that the template's work does.
[[nodiscard]] bool is_whole(const AircraftState& aircraft,
                            const TemplateWork& work,
                            const OnRecord& record) {
    const auto rule = std::find_if(aircraft.work_rules.begin(),
                                   aircraft.work_rules.end(),
                                   [&](const auto& each) { return each.name == work.name; });
    if (rule == aircraft.work_rules.end()) return false;
    if (rule->disputed) return true;  // first somebody answers
    const std::vector<facts::Renewal> wanted = facts::renewals_of(work, record);
    return std::all_of(wanted.begin(), wanted.end(), [&](const facts::Renewal& renewal) {
        return std::any_of(rule->renews.begin(), rule->renews.end(), [&](const auto& each) {
            return each.item == renewal.item;
        });
    });
}

}  // namespace

FieldView template_field() {
    FieldView out = make_choice("template", Word::field_template, {Word::template_none}, 0);
    out.hint = {Word::hint_template, {}};
    for (const TypeTemplate& type : shipped_templates())
        out.options.push_back({Word::as_told, {base::text_arg(type.name)}});
    return out;
}

const TypeTemplate* chosen_template(Form& form) {
    const FieldView* field = find_field(form, "template");
    if (field == nullptr || field->chosen < 1) return nullptr;
    const auto place = static_cast<std::size_t>(field->chosen) - 1;
    const std::vector<TypeTemplate>& all = shipped_templates();
    return place < all.size() ? &all[place] : nullptr;
}

const TemplateItem* overhaul_of(const TypeTemplate& type) {
    const auto found = std::find_if(type.items.begin(), type.items.end(), [](const auto& item) {
        return item.item.role == facts::ItemRole::overhaul;
    });
    return found == type.items.end() ? nullptr : &*found;
}

OnRecord on_record(const TypeTemplate& type, const AircraftState& aircraft) {
    OnRecord out;
    for (const TemplateItem& item : type.items) {
        const base::Id id = id_on(aircraft, item);
        if (!id.empty()) out.emplace_back(item.key, id);
    }
    return out;
}

std::vector<const TemplateItem*> items_left(const TypeTemplate& type,
                                            const AircraftState& aircraft,
                                            const TemplatePart& part) {
    const OnRecord record = on_record(type, aircraft);
    std::vector<const TemplateItem*> out;
    if (part.kind == TemplatePart::Kind::works) return out;
    for (const TemplateItem& item : type.items) {
        const bool inside =
            part.kind == TemplatePart::Kind::all || item.item.chapter == part.chapter;
        if (inside && !has(record, item.key)) out.push_back(&item);
    }
    return out;
}

std::vector<const TemplateWork*> works_left(const TypeTemplate& type,
                                            const AircraftState& aircraft) {
    const OnRecord record = on_record(type, aircraft);
    std::vector<const TemplateWork*> out;
    for (const TemplateWork& work : type.works) {
        if (facts::renewals_of(work, record).empty()) continue;
        if (!is_whole(aircraft, work, record)) out.push_back(&work);
    }
    return out;
}

std::vector<TemplatePart> parts_left(const TypeTemplate& type, const AircraftState& aircraft) {
    std::vector<TemplatePart> out;
    for (const TemplateItem* item : items_left(type, aircraft, {TemplatePart::Kind::all, {}})) {
        const TemplatePart part{TemplatePart::Kind::chapter, item->item.chapter};
        if (std::find(out.begin(), out.end(), part) == out.end()) out.push_back(part);
    }
    if (out.size() > 1) out.push_back({TemplatePart::Kind::all, {}});
    if (!works_left(type, aircraft).empty()) out.push_back({TemplatePart::Kind::works, {}});
    return out;
}

std::optional<TemplatePart> part_asked(Form& form) {
    const TypeTemplate* type = chosen_template(form);
    const FieldView* field = find_field(form, "part");
    if (type == nullptr || field == nullptr || field->chosen < 0) return std::nullopt;
    const auto place = static_cast<std::size_t>(field->chosen);
    if (place >= field->options.size()) return std::nullopt;
    for (const TemplatePart::Kind kind : {TemplatePart::Kind::all, TemplatePart::Kind::works}) {
        const TemplatePart part{kind, {}};
        if (title_of(part) == field->options[place]) return part;
    }
    for (const TemplateItem& item : type->items) {
        const TemplatePart part{TemplatePart::Kind::chapter, item.item.chapter};
        if (title_of(part) == field->options[place]) return part;
    }
    return std::nullopt;
}

std::optional<TemplatePart> part_after(const TypeTemplate& type,
                                       const AircraftState& aircraft,
                                       const TemplatePart& done) {
    const std::vector<TemplatePart> left = parts_left(type, aircraft);
    bool passed = false;
    for (const TemplateItem& item : type.items) {
        const TemplatePart part{TemplatePart::Kind::chapter, item.item.chapter};
        if (done.kind != TemplatePart::Kind::chapter) break;
        if (passed && !(part == done) && std::find(left.begin(), left.end(), part) != left.end())
            return part;
        passed = passed || part == done;
    }
    const bool has_works = !left.empty() && left.back().kind == TemplatePart::Kind::works;
    if (has_works && done.kind != TemplatePart::Kind::works) return left.back();
    return std::nullopt;
}

base::Message title_of(const TemplatePart& part) {
    switch (part.kind) {
        case TemplatePart::Kind::chapter:
            return {Word::as_told, {base::text_arg(part.chapter)}};
        case TemplatePart::Kind::all:
            return {Word::template_all, {}};
        case TemplatePart::Kind::works:
            return {Word::template_works, {}};
    }
    return {Word::blank, {}};
}

std::vector<base::Message> limit_lines(const facts::LimitSet& limit) {
    std::vector<base::Message> out{views::record_what({{}, {}, limit, {}})};
    if (limit.hours && limit.days)
        out.push_back({Word::record_limit_days, {base::whole_arg(*limit.days)}});
    const bool counted = out.front().word == Word::record_limit_counts;
    if (counted) out.clear();
    if (limit.landings)
        out.push_back({Word::record_limit_landings, {base::whole_arg(limit.landings->value)}});
    if (limit.starts)
        out.push_back({Word::record_limit_starts, {base::whole_arg(limit.starts->value)}});
    out.push_back({class_words()[static_cast<std::size_t>(limit.limit_class)], {}});
    views::add_limit_lines(limit, out);
    if (limit.anchor == facts::Anchor::overhaul) out.push_back({Word::template_from_overhaul, {}});
    return out;
}

void keep_entry(FieldView& fresh, const std::vector<FieldView>& before) {
    const auto old = std::find_if(
        before.begin(), before.end(), [&](const FieldView& each) { return each.id == fresh.id; });
    if (old == before.end()) return;
    fresh.text = old->text;
    fresh.problem = old->problem;
    fresh.open = old->open;
    if (old->options.empty()) return;
    const auto place = static_cast<std::size_t>(std::max(0, old->chosen));
    if (place >= old->options.size()) return;
    for (std::size_t at = 0; at < fresh.options.size(); ++at) {
        if (fresh.options[at] == old->options[place]) fresh.chosen = static_cast<std::int32_t>(at);
    }
}

}  // namespace twoclocks::canvas
