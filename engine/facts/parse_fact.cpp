#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/facts/check.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/names.hpp"
#include "engine/facts/parse.hpp"

namespace twoclocks::facts {
namespace {

using base::Problem;
using base::Problems;
using base::Trouble;

[[nodiscard]] Body read_body(const Json& object, bool nested, Problems& problems);

/// Walks the field list, takes what is there, complains about what is missing or wrong.
class Reader {
  public:
    Reader(const Json& object, Problems& problems) : object_(object), problems_(problems) {}

    void needed_text(std::string_view key, std::string& out) {
        if (const Json* value = take(key, Json::Type::text, true))
            out = short_text(key, value->text);
    }

    void text(std::string_view key, std::string& out) {
        if (const Json* value = take(key, Json::Type::text, false))
            out = short_text(key, value->text);
    }

    void note(std::string_view key, std::string& out) {
        if (const Json* value = take(key, Json::Type::text, true)) out = value->text;
    }

    void truth(std::string_view key, bool& out) {
        if (const Json* value = take(key, Json::Type::boolean, false)) out = value->truth;
    }

    void date(std::string_view key, std::optional<base::Date>& out) {
        if (const Json* value = take(key, Json::Type::text, false)) out = date_of(key, value->text);
    }

    void needed_date(std::string_view key, base::Date& out) {
        if (const Json* value = take(key, Json::Type::text, true)) out = date_of(key, value->text);
    }

    void needed_time(std::string_view key, base::FlightTime& out) {
        if (const Json* value = take(key, Json::Type::whole, true)) out.seconds = value->whole;
    }

    void time(std::string_view key, std::optional<base::FlightTime>& out) {
        if (const Json* value = take(key, Json::Type::whole, false)) out = {value->whole};
    }

    void count(std::string_view key, std::optional<base::Count>& out) {
        if (const Json* value = take(key, Json::Type::whole, false)) out = {value->whole};
    }

    void months(std::string_view key, std::optional<std::int32_t>& out) {
        if (const Json* value = take(key, Json::Type::whole, false)) out = small(value->whole);
    }

    void needed_whole(std::string_view key, std::int64_t& out) {
        if (const Json* value = take(key, Json::Type::whole, true)) out = value->whole;
    }

    template <class T>
    void name(std::string_view key, T& out) {
        if (const Json* value = take(key, Json::Type::text, true)) named(key, *value, out);
    }

    void id(std::string_view key, base::Id& out) {
        if (const Json* value = take(key, Json::Type::text, true)) id_in(key, *value, out);
    }

    void ref(std::string_view key, Ref& out) {
        if (const Json* value = take(key, Json::Type::text, true)) ref_in(key, *value, out);
    }

    void refs(std::string_view key, std::vector<Ref>& out) {
        each(key, Json::Type::text, [&](const Json& item) {
            ref_in(key, item, out.emplace_back());
        });
    }

    void ids(std::string_view key, std::vector<base::Id>& out) {
        each(
            key, Json::Type::text, [&](const Json& item) { id_in(key, item, out.emplace_back()); });
    }

    void renewals(std::string_view key, std::vector<Renewal>& out) {
        each(key, Json::Type::object, [&](const Json& item) {
            Reader inner{item, problems_};
            Renewal& renewal = out.emplace_back();
            inner.id("item", renewal.item);
            if (item.find("clocks") != nullptr) {
                inner.each("clocks", Json::Type::text, [&](const Json& clock) {
                    inner.named("clocks", clock, renewal.clocks.emplace_back());
                });
            }
            renewal.extra = inner.rest();
        });
    }

    void body(std::string_view key, std::shared_ptr<const Body>& out) {
        if (const Json* value = take(key, Json::Type::object, true)) {
            out = std::make_shared<Body>(read_body(*value, true, problems_));
        }
    }

    /// Members nobody asked for, by key.
    [[nodiscard]] std::vector<std::pair<std::string, Json>> rest() const {
        std::vector<std::pair<std::string, Json>> out;
        for (const auto& member : object_.members) {
            const bool taken =
                std::find(taken_.begin(), taken_.end(), member.first) != taken_.end();
            if (!taken) out.push_back(member);
        }
        std::sort(out.begin(), out.end(), [](const auto& left, const auto& right) {
            return left.first < right.first;
        });
        return out;
    }

    void complain(Trouble code, std::string_view key) {
        Problem problem = base::trouble(code, {base::text_arg(std::string{key})});
        problem.field = key;
        problems_.push_back(std::move(problem));
    }

  private:
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

    template <class Do>
    void each(std::string_view key, Json::Type type, Do one) {
        const Json* list = take(key, Json::Type::list, true);
        if (list == nullptr) return;
        for (const Json& item : list->items) {
            if (item.type == type) {
                one(item);
            } else {
                complain(Trouble::fact_field_wrong, key);
            }
        }
    }

    template <class T>
    void named(std::string_view key, const Json& value, T& out) {
        for (const auto& name : names_of(out)) {
            if (name.word == value.text) {
                out = name.value;
                return;
            }
        }
        complain(Trouble::fact_field_wrong, key);
    }

    [[nodiscard]] std::string short_text(std::string_view key, const std::string& text) {
        if (text.size() > static_cast<std::size_t>(longest_text_bytes)) {
            complain(Trouble::line_text_too_long, key);
        }
        return text;
    }

    [[nodiscard]] base::Date date_of(std::string_view key, const std::string& text) {
        const base::Result<base::Date> date = base::parse_date(text);
        if (date) return date.value();
        Problem problem = date.problems().front();
        problem.field = key;
        problems_.push_back(std::move(problem));
        return {};
    }

    [[nodiscard]] static std::int32_t small(std::int64_t whole) {
        constexpr std::int64_t bound = 1'000'000;
        return static_cast<std::int32_t>(std::clamp(whole, -bound, bound));
    }

    void id_in(std::string_view key, const Json& value, base::Id& out) {
        const base::Result<base::Id> id = base::parse_id(value.text);
        if (id) {
            out = id.value();
        } else {
            complain(Trouble::fact_field_wrong, key);
        }
    }

    void ref_in(std::string_view key, const Json& value, Ref& out) {
        const base::Result<Ref> ref = parse_ref(value.text);
        if (ref) {
            out = ref.value();
        } else {
            complain(Trouble::fact_field_wrong, key);
        }
    }

    const Json& object_;
    Problems& problems_;
    std::vector<std::string_view> taken_;
};

[[nodiscard]] bool may_nest(const Fields& fields) {
    return !std::holds_alternative<Correction>(fields) &&
           !std::holds_alternative<Withdrawal>(fields) && !std::holds_alternative<Answer>(fields);
}

void read_fields(Reader& reader, Body& body, bool nested) {
    std::string kind;
    reader.needed_text("kind", kind);
    reader.needed_date("on", body.on);
    reader.ids("about", body.about);
    body.fields = empty_fields(kind);
    if (nested && !may_nest(body.fields)) {
        reader.complain(Trouble::fact_kind_nested, "instead");
        body.fields = UnknownKind{kind};
    }
    std::visit([&](auto& fields) { visit(reader, fields); }, body.fields);
}

Body read_body(const Json& object, bool nested, Problems& problems) {
    Body body;
    Reader reader{object, problems};
    read_fields(reader, body, nested);
    body.extra = reader.rest();
    return body;
}

}  // namespace

base::Result<Ref> parse_ref(std::string_view text) {
    constexpr std::size_t id_length = 36;
    constexpr std::size_t content_length = 16;
    const base::Result<base::Id> id = base::parse_id(text.substr(0, id_length));
    if (!id) return id.problems();
    Ref ref{id.value(), 0};
    if (text.size() == id_length) return ref;
    const std::string_view rest = text.substr(id_length);
    const Problem wrong = base::trouble(Trouble::id_malformed, {base::text_arg(std::string{text})});
    if (rest.size() != content_length + 1 || rest.front() != '/') return wrong;
    for (const char digit : rest.substr(1)) {
        const std::size_t value = std::string_view{"0123456789abcdef"}.find(digit);
        if (value == std::string_view::npos) return wrong;
        ref.content = ref.content << 4U | value;
    }
    return ref;
}

base::Result<Fact> parse_fact(std::string_view text, std::int32_t line) {
    base::Result<Json> json = read_json(text, line);
    if (!json) return json.problems();
    Problems problems;
    Fact fact;
    Reader reader{json.value(), problems};
    reader.id("id", fact.id);
    std::int64_t tick = 0;
    reader.needed_whole("at", fact.stamp.wall_ms);
    reader.needed_whole("tick", tick);
    reader.needed_text("device", fact.stamp.device);
    reader.text("by", fact.by);
    read_fields(reader, fact.body, false);
    fact.body.extra = reader.rest();
    if (tick < 0 || tick > INT32_MAX) reader.complain(Trouble::fact_field_wrong, "tick");
    if (fact.stamp.wall_ms < 0) reader.complain(Trouble::fact_field_wrong, "at");
    fact.stamp.tick = static_cast<std::int32_t>(std::clamp<std::int64_t>(tick, 0, INT32_MAX));
    if (problems.empty()) problems = check(fact.body);
    if (problems.empty()) return fact;
    for (Problem& problem : problems)
        problem.line = line;
    return problems;
}

}  // namespace twoclocks::facts
