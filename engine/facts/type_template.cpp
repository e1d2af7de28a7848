#include "engine/facts/type_template.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/facts/check.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/interval.hpp"
#include "engine/facts/names.hpp"

namespace twoclocks::facts {
namespace {

using base::Problem;
using base::Problems;
using base::Trouble;

/// Walks the field lists of a record and takes what a template may say of it. What only a person
/// can know is not taken, and so refused with every other field that nobody asked for.
class TemplateReader final : public FieldTaker {
  public:
    TemplateReader(const Json& object, std::string place, Problems& problems)
        : object_(object), place_(std::move(place)), problems_(problems) {}

    void needed_text(std::string_view key, std::string& out) override {
        if (const Json* value = take(key, Json::Type::text, true)) out = value->text;
    }

    void text(std::string_view key, std::string& out) override {
        if (key != "chapter") return;
        if (const Json* value = take(key, Json::Type::text, false)) out = value->text;
    }

    void truth(std::string_view key, bool& out) override {
        if (const Json* value = take(key, Json::Type::boolean, false)) out = value->truth;
    }

    void time(std::string_view key, std::optional<base::FlightTime>& out) override {
        if (key == "anchor_total") return;
        const Json* value = take(key, Json::Type::whole, false);
        if (value == nullptr) return;
        out = base::hours(std::clamp<std::int64_t>(value->whole, -1, base::most_hours + 1));
    }

    void count(std::string_view key, std::optional<base::Count>& out) override {
        if (key.starts_with("anchor_")) return;
        if (const Json* value = take(key, Json::Type::whole, false)) out = {value->whole};
    }

    void months(std::string_view key, std::optional<std::int32_t>& out) override {
        const Json* value = take(key, Json::Type::whole, false);
        if (value == nullptr) return;
        out =
            static_cast<std::int32_t>(std::clamp<std::int64_t>(value->whole, INT32_MIN, INT32_MAX));
    }

    void number(std::string_view key, std::optional<std::int32_t>& out, std::int32_t) override {
        months(key, out);
    }

    void choice(std::string_view key, Choices choices, std::uint8_t& out) override {
        const bool needed = key == "role" || key == "class";
        if (const Json* value = take(key, Json::Type::text, needed))
            named(key, value->text, choices, out);
    }

    void maybe_choice(std::string_view key,
                      Choices choices,
                      std::optional<std::uint8_t>& out) override {
        if (const Json* value = take(key, Json::Type::text, false))
            named(key, value->text, choices, out.emplace());
    }

    void named(std::string_view key, const std::string& word, Choices choices, std::uint8_t& out) {
        for (const Name& name : names_of(choices)) {
            if (name.word != word) continue;
            out = name.value;
            return;
        }
        complain(Trouble::fact_field_wrong, key);
    }

    template <class Do>
    void each(std::string_view key, Json::Type type, bool needed, Do one) {
        const Json* list = take(key, Json::Type::list, needed);
        if (list == nullptr) return;
        for (const Json& value : list->items) {
            if (value.type == type)
                one(value);
            else
                complain(Trouble::fact_field_wrong, key);
        }
    }

    /// A problem about a field, or about the whole where the key is empty.
    void complain(Trouble code, std::string_view key, const std::string& about) {
        Problem problem = base::trouble(code, {base::text_arg(about)});
        problem.field = place_of(key);
        problems_.push_back(std::move(problem));
    }

    void complain(Trouble code, std::string_view key) { complain(code, key, place_of(key)); }

    void complain(Problem problem) {
        problem.field = place_of(problem.field);
        problems_.push_back(std::move(problem));
    }

    /// Refuses every field that nobody asked for.
    void end() {
        for (const auto& [key, value] : object_.members) {
            if (std::find(taken_.begin(), taken_.end(), key) == taken_.end())
                complain(Trouble::template_field_unknown, key, key);
        }
    }

  private:
    [[nodiscard]] std::string place_of(std::string_view key) const {
        std::string out = place_;
        if (!out.empty() && !key.empty()) out += '.';
        out += key;
        return out;
    }

    [[nodiscard]] const Json* take(std::string_view key, Json::Type type, bool needed) {
        taken_.push_back(key);
        const Json* value = object_.find(key);
        if (value == nullptr) {
            if (needed) complain(Trouble::fact_field_missing, key);
            return nullptr;
        }
        if (value->type == type) return value;
        complain(Trouble::fact_field_wrong, key);
        return nullptr;
    }

    const Json& object_;
    std::string place_;
    Problems& problems_;
    std::vector<std::string_view> taken_;
};

[[nodiscard]] std::string text_in(const Json& object, std::string_view key) {
    const Json* value = object.find(key);
    return value == nullptr ? std::string{} : value->text;
}

void read_item(const Json& object, TypeTemplate& out, Problems& problems) {
    TemplateReader reader{object, "items." + text_in(object, "key"), problems};
    TemplateItem item;
    reader.needed_text("key", item.key);
    visit_fields(reader, item.item);
    visit_fields(reader, item.limit);
    reader.end();
    for (const TemplateItem& other : out.items) {
        if (other.key == item.key) reader.complain(Trouble::template_key_twice, "key", item.key);
        if (other.item.name == item.item.name)
            reader.complain(Trouble::template_key_twice, "name", item.item.name);
    }
    for (Problem& problem : check({{}, {base::Id{}, base::Id{}}, item.limit, {}}))
        reader.complain(std::move(problem));
    out.items.push_back(std::move(item));
}

[[nodiscard]] bool counts(const LimitSet& limit, Clock clock) {
    return !is_empty(part(repeat_of(limit), clock)) || !is_empty(part(limit.first, clock)) ||
           !is_empty(part(limit.cap, clock));
}

/// A work may renew only what the template has.
void check_renewal(const TemplateRenewal& renewal,
                   const TypeTemplate& known,
                   TemplateReader& reader) {
    const auto found = std::find_if(known.items.begin(), known.items.end(), [&](const auto& item) {
        return item.key == renewal.item;
    });
    if (found == known.items.end())
        return reader.complain(Trouble::template_item_unknown, "renews", renewal.item);
    for (const Clock clock : renewal.clocks) {
        if (!counts(found->limit, clock))
            reader.complain(Trouble::template_clock_missing, "renews", renewal.item);
    }
}

void read_work(const Json& object, TypeTemplate& out, Problems& problems) {
    const std::string place = "works." + text_in(object, "name");
    TemplateReader reader{object, place, problems};
    TemplateWork work;
    reader.needed_text("name", work.name);
    reader.each("renews", Json::Type::object, true, [&](const Json& value) {
        TemplateReader inner{value, place, problems};
        TemplateRenewal& renewal = work.renews.emplace_back();
        inner.needed_text("item", renewal.item);
        inner.each("clocks", Json::Type::text, false, [&](const Json& clock) {
            std::uint8_t place_of_clock = 0;
            inner.named("clocks", clock.text, Choices::clock, place_of_clock);
            renewal.clocks.push_back(static_cast<Clock>(place_of_clock));
        });
        inner.end();
        check_renewal(renewal, out, reader);
    });
    reader.end();
    if (work.renews.empty()) reader.complain(Trouble::template_work_empty, "renews", work.name);
    for (const TemplateWork& other : out.works) {
        if (other.name == work.name)
            reader.complain(Trouble::template_key_twice, "name", work.name);
    }
    out.works.push_back(std::move(work));
}

/// The last overhaul where the item counts from one; a limit without counts has no anchors.
void anchor_at(LimitSet& limit, const LastOverhaul& last) {
    if (limit.anchor != Anchor::overhaul) return;
    limit.anchor = last.anchor;
    limit.anchor_on = last.on;
    limit.anchor_total = last.total;
}

}  // namespace

base::Result<TypeTemplate> parse_template(std::string_view text) {
    base::Result<Json> json = read_json(text, 0);
    if (!json) return json.problems();
    TypeTemplate out;
    Problems problems;
    TemplateReader reader{json.value(), {}, problems};
    bool invented = false;
    reader.needed_text("name", out.name);
    reader.truth("invented", invented);
    reader.needed_text("note", out.note);
    if (!invented) reader.complain(Trouble::template_not_invented, "invented", out.name);
    reader.each("items", Json::Type::object, true, [&](const Json& item) {
        read_item(item, out, problems);
    });
    reader.each("works", Json::Type::object, true, [&](const Json& work) {
        read_work(work, out, problems);
    });
    reader.end();
    if (!problems.empty()) return problems;
    return out;
}

std::vector<Body> item_bodies(const TemplateItem& item,
                              const LimitSet& limit,
                              const TakenOver& taken,
                              const LastOverhaul& last,
                              base::Id id) {
    LimitSet own = limit;
    anchor_at(own, last);
    own.source = taken.source;
    own.revision = taken.revision;
    const std::vector<base::Id> about{taken.aircraft, id};
    return {{taken.on, about, item.item, {}}, {taken.on, about, std::move(own), {}}};
}

std::vector<Renewal> renewals_of(const TemplateWork& work,
                                 const std::vector<std::pair<std::string, base::Id>>& on_record) {
    std::vector<Renewal> out;
    for (const TemplateRenewal& renewal : work.renews) {
        for (const auto& [key, id] : on_record) {
            if (key == renewal.item) out.push_back({id, renewal.clocks});
        }
    }
    return out;
}

Body rule_body(const TemplateWork& work,
               const std::vector<std::pair<std::string, base::Id>>& on_record,
               const TakenOver& taken) {
    WorkRule rule{work.name, renewals_of(work, on_record), taken.source, taken.revision};
    return {taken.on, {taken.aircraft}, std::move(rule), {}};
}

}  // namespace twoclocks::facts
