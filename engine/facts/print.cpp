#include "engine/facts/print.hpp"

#include <algorithm>

#include "engine/base/hash.hpp"
#include "engine/facts/fields.hpp"
#include "engine/facts/names.hpp"

namespace twoclocks::facts {
namespace {

using Extra = std::vector<std::pair<std::string, Json>>;

void print_body(const Body& body, std::string& out);

/// Fields that this version does not know, as they were read.
void print_extra(const Extra& extra, std::string& out) {
    for (const auto& [key, value] : extra) {
        out += ',';
        print_json_text(key, out);
        out += ':';
        print_json(value, out);
    }
}

/// Walks the field list and appends what is there.
class Writer final : public FieldTeller {
  public:
    explicit Writer(std::string& out) : out_(out) {}

    void needed_text(std::string_view key, const std::string& text) override {
        start(key);
        print_json_text(text, out_);
    }

    void text(std::string_view key, const std::string& text) override {
        if (!text.empty()) needed_text(key, text);
    }

    void note(std::string_view key, const std::string& text) override { needed_text(key, text); }

    void truth(std::string_view key, bool truth) override {
        if (!truth) return;
        start(key);
        out_ += "true";
    }

    void date(std::string_view key, const std::optional<base::Date>& date) override {
        if (date) needed_text(key, base::print_date(*date));
    }

    void needed_time(std::string_view key, base::FlightTime time) override {
        whole(key, time.seconds);
    }

    void time(std::string_view key, const std::optional<base::FlightTime>& time) override {
        if (time) whole(key, time->seconds);
    }

    void count(std::string_view key, const std::optional<base::Count>& count) override {
        if (count) whole(key, count->value);
    }

    void money(std::string_view key, const std::optional<base::Money>& money) override {
        if (money) needed_text(key, base::print_money(*money));
    }

    void months(std::string_view key, const std::optional<std::int32_t>& months) override {
        if (months) whole(key, *months);
    }

    void number(std::string_view key,
                const std::optional<std::int32_t>& number,
                std::int32_t) override {
        if (number) whole(key, *number);
    }

    void needed_number(std::string_view key, std::int32_t number, std::int32_t) override {
        whole(key, number);
    }

    void maybe_ids(std::string_view key, const std::vector<base::Id>& ids) override {
        if (ids.empty()) return;
        start(key);
        out_ += '[';
        for (const base::Id& id : ids) {
            if (&id != ids.data()) out_ += ',';
            out_ += '"' + base::print_id(id) + '"';
        }
        out_ += ']';
    }

    void choice(std::string_view key, Choices choices, std::uint8_t value) override {
        start(key);
        out_ += '"';
        out_ += word_of(choices, value);
        out_ += '"';
    }

    void maybe_choice(std::string_view key,
                      Choices choices,
                      std::optional<std::uint8_t> value) override {
        if (value) choice(key, choices, *value);
    }

    void ref(std::string_view key, const Ref& ref) override {
        start(key);
        out_ += '"' + print_ref(ref) + '"';
    }

    void refs(std::string_view key, const std::vector<Ref>& refs) override {
        start(key);
        out_ += '[';
        for (const Ref& one : refs) {
            if (&one != refs.data()) out_ += ',';
            out_ += '"' + print_ref(one) + '"';
        }
        out_ += ']';
    }

    void renewals(std::string_view key, const std::vector<Renewal>& renewals) override {
        start(key);
        out_ += '[';
        for (const Renewal& one : renewals) {
            if (&one != renewals.data()) out_ += ',';
            out_ += "{\"item\":\"" + base::print_id(one.item) + '"';
            clocks(one.clocks);
            print_extra(one.extra, out_);
            out_ += '}';
        }
        out_ += ']';
    }

    void body(std::string_view key, const std::shared_ptr<const Body>& body) override {
        start(key);
        out_ += '{';
        if (body) print_body(*body, out_);
        out_ += '}';
    }

    void whole(std::string_view key, std::int64_t number) {
        start(key);
        out_ += std::to_string(number);
    }

  private:
    void start(std::string_view key) {
        out_ += ",\"";
        out_ += key;
        out_ += "\":";
    }

    void clocks(const std::vector<Clock>& clocks) {
        if (clocks.empty()) return;
        out_ += ",\"clocks\":[";
        for (const Clock clock : clocks) {
            if (out_.back() != '[') out_ += ',';
            out_ += '"';
            out_ += word_of(Choices::clock, static_cast<std::uint8_t>(clock));
            out_ += '"';
        }
        out_ += ']';
    }

    std::string& out_;
};

void print_about(const std::vector<base::Id>& about, std::string& out) {
    out += ",\"about\":[";
    for (const base::Id& id : about) {
        if (&id != about.data()) out += ',';
        out += '"' + base::print_id(id) + '"';
    }
    out += ']';
}

void print_kind(const Fields& fields, std::string& out) {
    out += "\"kind\":";
    print_json_text(kind_name(fields), out);
}

void print_rest(const Body& body, std::string& out) {
    Writer writer{out};
    visit_fields(writer, body.fields);
    print_extra(body.extra, out);
}

void print_body(const Body& body, std::string& out) {
    print_kind(body.fields, out);
    out += ",\"on\":\"" + base::print_date(body.on) + '"';
    print_about(body.about, out);
    print_rest(body, out);
}

}  // namespace

std::string print_fact(const Fact& fact) {
    std::string out = "{\"id\":\"" + base::print_id(fact.id) + "\",";
    out.reserve(320);
    print_kind(fact.body.fields, out);
    out += ",\"on\":\"" + base::print_date(fact.body.on) + '"';
    Writer stamp{out};
    stamp.whole("at", fact.stamp.wall_ms);
    stamp.whole("tick", fact.stamp.tick);
    stamp.needed_text("device", fact.stamp.device);
    stamp.text("by", fact.by);
    print_about(fact.body.about, out);
    print_rest(fact.body, out);
    out += '}';
    return out;
}

std::uint64_t content_of(const Fact& fact) {
    const base::Sha256 digest = base::sha256(print_fact(fact));
    std::uint64_t content = 0;
    for (std::size_t i = 0; i < 8; ++i)
        content = content << 8U | digest[i];
    return content == 0 ? 1 : content;
}

bool say_the_same(const Body& left, const Body& right) {
    if (left.on != right.on || left.fields.index() != right.fields.index()) return false;
    std::string one;
    std::string other;
    print_body(left, one);
    print_body(right, other);
    return one == other;
}

std::string print_ref(const Ref& ref) {
    std::string out = base::print_id(ref.id);
    if (ref.content == 0) return out;
    out += '/';
    constexpr std::string_view digits = "0123456789abcdef";
    for (unsigned shift = 64; shift > 0; shift -= 4)
        out += digits[ref.content >> (shift - 4) & 15U];
    return out;
}

bool earlier(const Stamp& left, const Stamp& right) {
    if (left.wall_ms != right.wall_ms) return left.wall_ms < right.wall_ms;
    if (left.tick != right.tick) return left.tick < right.tick;
    return left.device < right.device;
}

std::string_view kind_name(const Fields& fields) {
    if (const auto* unknown = std::get_if<UnknownKind>(&fields)) return unknown->kind;
    return kind_words[fields.index()];
}

std::vector<base::Id> subjects_of(const Body& body) {
    std::vector<base::Id> out = body.about;
    if (const auto* work = std::get_if<WorkDone>(&body.fields)) {
        for (const Renewal& renewal : work->renews)
            out.push_back(renewal.item);
    }
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

base::Id aircraft_of(const Body& body) {
    return body.about.empty() ? base::Id{} : body.about.front();
}

}  // namespace twoclocks::facts
