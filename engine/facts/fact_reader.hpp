// Walks the fields of a record in a line of a file. Only parse_fact.cpp reads with it.
#pragma once

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/judge.hpp"
#include "engine/facts/names.hpp"
#include "engine/facts/parse.hpp"

namespace twoclocks::facts {

using base::Problem;
using base::Problems;
using base::Trouble;

/// A body and, where it is a correction, the one that takes its place.
/// Units: none. Errors: those of parse_fact. Source: journal.schema.json.
[[nodiscard]] Body read_body(const Json& object,
                             bool nested,
                             Problems& problems,
                             Problems& cautions);

/// Walks the field list, takes what is there, complains about what is missing or wrong.
class Reader final : public Judge, public FieldTaker {
  public:
    Reader(const Json& object, Problems& problems, Problems& cautions)
        : Judge(problems), object_(object), cautions_(cautions) {}

    void needed_text(std::string_view key, std::string& out) override {
        if (const Json* value = take(key, Json::Type::text, true))
            out = short_text(key, value->text);
    }

    void text(std::string_view key, std::string& out) override {
        if (const Json* value = take(key, Json::Type::text, false))
            out = short_text(key, value->text);
    }

    void note(std::string_view key, std::string& out) override {
        if (const Json* value = take(key, Json::Type::text, true)) out = value->text;
    }

    void truth(std::string_view key, bool& out) override {
        if (const Json* value = take(key, Json::Type::boolean, false)) out = value->truth;
    }

    void date(std::string_view key, std::optional<base::Date>& out) override {
        if (const Json* value = take(key, Json::Type::text, false)) out = date_of(key, value->text);
    }

    void needed_date(std::string_view key, base::Date& out) {
        if (const Json* value = take(key, Json::Type::text, true)) out = date_of(key, value->text);
    }

    void needed_time(std::string_view key, base::FlightTime& out) override {
        if (const Json* value = take(key, Json::Type::whole, true)) out.seconds = value->whole;
    }

    void time(std::string_view key, std::optional<base::FlightTime>& out) override {
        if (const Json* value = take(key, Json::Type::whole, false)) out = {value->whole};
    }

    void count(std::string_view key, std::optional<base::Count>& out) override {
        if (const Json* value = take(key, Json::Type::whole, false)) out = {value->whole};
    }

    void money(std::string_view key, std::optional<base::Money>& out) override {
        if (const Json* value = take(key, Json::Type::text, false))
            out = money_of(key, value->text);
    }

    void months(std::string_view key, std::optional<std::int32_t>& out) override {
        if (const Json* value = take(key, Json::Type::whole, false)) out = small(value->whole);
    }

    void number(std::string_view key, std::optional<std::int32_t>& out, std::int32_t) override {
        if (const Json* value = take(key, Json::Type::whole, false)) out = small(value->whole);
    }

    void needed_number(std::string_view key, std::int32_t& out, std::int32_t) override {
        if (const Json* value = take(key, Json::Type::whole, true)) out = small(value->whole);
    }

    void maybe_ids(std::string_view key, std::vector<base::Id>& out) override {
        object_.find(key) == nullptr ? taken_.push_back(key) : ids(key, out);
    }

    void maybe_choice(std::string_view key,
                      Choices choices,
                      std::optional<std::uint8_t>& out) override {
        if (const Json* word = take(key, Json::Type::text, false))
            named(key, *word, choices, out.emplace());
    }

    void needed_whole(std::string_view key, std::int64_t& out) {
        if (const Json* value = take(key, Json::Type::whole, true)) out = value->whole;
    }

    void choice(std::string_view key, Choices choices, std::uint8_t& out) override {
        if (const Json* value = take(key, Json::Type::text, true)) named(key, *value, choices, out);
    }

    void id(std::string_view key, base::Id& out) {
        if (const Json* value = take(key, Json::Type::text, true)) id_in(key, *value, out);
    }

    void ref(std::string_view key, Ref& out) override {
        if (const Json* value = take(key, Json::Type::text, true)) ref_in(key, *value, out);
    }

    void refs(std::string_view key, std::vector<Ref>& out) override {
        each(key, Json::Type::text, [&](const Json& item) {
            ref_in(key, item, out.emplace_back());
        });
    }

    void ids(std::string_view key, std::vector<base::Id>& out) {
        each(
            key, Json::Type::text, [&](const Json& item) { id_in(key, item, out.emplace_back()); });
    }

    void renewals(std::string_view key, std::vector<Renewal>& out) override {
        each(key, Json::Type::object, [&](const Json& item) {
            Reader inner{item, problems(), cautions_};
            Renewal& renewal = out.emplace_back();
            inner.id("item", renewal.item);
            if (item.find("clocks") != nullptr) {
                inner.each("clocks", Json::Type::text, [&](const Json& clock) {
                    std::uint8_t place = 0;
                    inner.named("clocks", clock, Choices::clock, place);
                    renewal.clocks.push_back(static_cast<Clock>(place));
                });
            }
            renewal.extra = inner.rest();
            newer_words_.insert(
                newer_words_.end(), inner.newer_words_.begin(), inner.newer_words_.end());
        });
    }

    void body(std::string_view key, std::shared_ptr<const Body>& out) override {
        if (const Json* value = take(key, Json::Type::object, true)) {
            out = std::make_shared<Body>(read_body(*value, true, problems(), cautions_));
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
        base::sort_stably(
            out, [](const auto& left, const auto& right) { return left.first < right.first; });
        return out;
    }

    /// How many members were asked for by now.
    [[nodiscard]] std::size_t taken() const { return taken_.size(); }

    /// Words of a newer version that were met.
    [[nodiscard]] const Problems& newer_words() const { return newer_words_; }

    /// Every member asked for since `from`, in the order of the field list, then the others by key:
    /// the order in which a version that understands them prints them.
    [[nodiscard]] std::vector<std::pair<std::string, Json>> members_since(std::size_t from) const {
        std::vector<std::pair<std::string, Json>> out;
        for (std::size_t place = from; place < taken_.size(); ++place) {
            const Json* value = object_.find(taken_[place]);
            if (value != nullptr) out.emplace_back(taken_[place], *value);
        }
        const std::vector<std::pair<std::string, Json>> others = rest();
        out.insert(out.end(), others.begin(), others.end());
        return out;
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

    void named(std::string_view key, const Json& value, Choices choices, std::uint8_t& out) {
        for (const Name& name : names_of(choices)) {
            if (name.word == value.text) {
                out = name.value;
                return;
            }
        }
        newer_words_.push_back(newer_word(key, value.text));
    }

    [[nodiscard]] static std::int32_t small(std::int64_t whole) {
        return static_cast<std::int32_t>(std::clamp<std::int64_t>(whole, INT32_MIN, INT32_MAX));
    }

    const Json& object_;
    Problems& cautions_;
    Problems newer_words_;
    std::vector<std::string_view> taken_;
};

}  // namespace twoclocks::facts
