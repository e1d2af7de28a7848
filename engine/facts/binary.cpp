#include "engine/facts/binary.hpp"

#include "engine/facts/fields.hpp"
#include "engine/facts/names.hpp"
#include "engine/facts/parse.hpp"

namespace twoclocks::facts {
namespace {

constexpr std::int64_t most_items = 1'000'000;

void write_body(const Body& body, std::string& out);
[[nodiscard]] bool read_body(std::string_view& in, Body& body, bool nested);

/// Walks the field list and appends every field, there or not.
class BinaryWriter final : public FieldTeller {
  public:
    explicit BinaryWriter(std::string& out) : out_(out) {}

    void needed_text(std::string_view, const std::string& value) override {
        write_text(value, out_);
    }

    void text(std::string_view, const std::string& value) override { write_text(value, out_); }

    void note(std::string_view, const std::string& value) override { write_text(value, out_); }

    void truth(std::string_view, bool value) override { write_whole(value ? 1 : 0, out_); }

    void needed_time(std::string_view, base::FlightTime value) override {
        write_whole(value.seconds, out_);
    }

    void date(std::string_view, const std::optional<base::Date>& value) override {
        maybe(value, [](base::Date date) { return std::int64_t{date.day_number}; });
    }

    void time(std::string_view, const std::optional<base::FlightTime>& value) override {
        maybe(value, [](base::FlightTime time) { return time.seconds; });
    }

    void count(std::string_view, const std::optional<base::Count>& value) override {
        maybe(value, [](base::Count count) { return count.value; });
    }

    void money(std::string_view, const std::optional<base::Money>& value) override {
        maybe(value, [](base::Money money) { return money.minor_units; });
        if (value) write_text(base::print_currency(value->currency), out_);
    }

    void months(std::string_view, const std::optional<std::int32_t>& value) override {
        maybe(value, [](std::int32_t months) { return std::int64_t{months}; });
    }

    void number(std::string_view, const std::optional<std::int32_t>& value, std::int32_t) override {
        maybe(value, [](std::int32_t number) { return std::int64_t{number}; });
    }

    void needed_number(std::string_view, std::int32_t value, std::int32_t) override {
        write_whole(value, out_);
    }

    void maybe_ids(std::string_view, const std::vector<base::Id>& values) override {
        write_whole(static_cast<std::int64_t>(values.size()), out_);
        for (const base::Id& one : values)
            id(one);
    }

    void maybe_choice(std::string_view, Choices, std::optional<std::uint8_t> value) override {
        maybe(value, [](std::uint8_t place) { return std::int64_t{place}; });
    }

    void choice(std::string_view, Choices, std::uint8_t value) override {
        write_whole(value, out_);
    }

    void id(const base::Id& value) {
        write_whole(static_cast<std::int64_t>(value.high), out_);
        write_whole(static_cast<std::int64_t>(value.low), out_);
    }

    void ref(std::string_view, const Ref& value) override {
        id(value.id);
        write_whole(static_cast<std::int64_t>(value.content), out_);
    }

    void refs(std::string_view key, const std::vector<Ref>& values) override {
        write_whole(static_cast<std::int64_t>(values.size()), out_);
        for (const Ref& one : values)
            ref(key, one);
    }

    void renewals(std::string_view key, const std::vector<Renewal>& values) override {
        write_whole(static_cast<std::int64_t>(values.size()), out_);
        for (const Renewal& one : values) {
            id(one.item);
            write_whole(static_cast<std::int64_t>(one.clocks.size()), out_);
            for (const Clock clock : one.clocks)
                name(key, clock);
            write_extra(one.extra, out_);
        }
    }

    void body(std::string_view, const std::shared_ptr<const Body>& value) override {
        write_whole(value ? 1 : 0, out_);
        if (value) write_body(*value, out_);
    }

  private:
    template <class T, class Number>
    void maybe(const std::optional<T>& value, Number number) {
        write_whole(value ? 1 : 0, out_);
        if (value) write_whole(number(*value), out_);
    }

    std::string& out_;
};

/// Walks the field list and takes every field; `sound` falls when the bytes make no sense.
class BinaryReader final : public FieldTaker {
  public:
    explicit BinaryReader(std::string_view& in) : in_(in) {}

    void needed_text(std::string_view, std::string& value) override {
        sound = sound && read_text(in_, value);
    }

    void text(std::string_view, std::string& value) override {
        sound = sound && read_text(in_, value);
    }

    void note(std::string_view, std::string& value) override {
        sound = sound && read_text(in_, value);
    }

    void truth(std::string_view, bool& value) override { value = whole() == 1; }

    void needed_time(std::string_view, base::FlightTime& value) override {
        value.seconds = whole();
    }

    void date(std::string_view, std::optional<base::Date>& value) override {
        if (whole() == 1) value = base::Date{static_cast<std::int32_t>(whole())};
    }

    void time(std::string_view, std::optional<base::FlightTime>& value) override {
        if (whole() == 1) value = base::FlightTime{whole()};
    }

    void count(std::string_view, std::optional<base::Count>& value) override {
        if (whole() == 1) value = base::Count{whole()};
    }

    void money(std::string_view, std::optional<base::Money>& value) override {
        if (whole() != 1) return;
        value = base::Money{whole(), {}};
        std::string code;
        sound = sound && read_text(in_, code);
        const auto currency = base::parse_currency(code);
        sound = sound && currency.ok();
        if (sound) value->currency = currency.value();
    }

    void months(std::string_view, std::optional<std::int32_t>& value) override {
        if (whole() == 1) value = static_cast<std::int32_t>(whole());
    }

    void number(std::string_view, std::optional<std::int32_t>& value, std::int32_t) override {
        if (whole() == 1) value = static_cast<std::int32_t>(whole());
    }

    void needed_number(std::string_view, std::int32_t& value, std::int32_t) override {
        value = static_cast<std::int32_t>(whole());
    }

    void maybe_ids(std::string_view, std::vector<base::Id>& values) override {
        for (std::int64_t left = size(); left > 0 && sound; --left)
            id(values.emplace_back());
    }

    void maybe_choice(std::string_view key,
                      Choices choices,
                      std::optional<std::uint8_t>& value) override {
        if (whole() == 1) choice(key, choices, value.emplace());
    }

    void choice(std::string_view, Choices choices, std::uint8_t& value) override {
        const std::int64_t number = whole();
        const auto many = static_cast<std::int64_t>(names_of(choices).size());
        sound = sound && number >= 0 && number < many;
        value = static_cast<std::uint8_t>(sound ? number : 0);
    }

    void id(base::Id& value) {
        value.high = static_cast<std::uint64_t>(whole());
        value.low = static_cast<std::uint64_t>(whole());
    }

    void ref(std::string_view, Ref& value) override {
        id(value.id);
        value.content = static_cast<std::uint64_t>(whole());
    }

    void refs(std::string_view key, std::vector<Ref>& values) override {
        for (std::int64_t left = size(); left > 0 && sound; --left)
            ref(key, values.emplace_back());
    }

    void renewals(std::string_view key, std::vector<Renewal>& values) override {
        for (std::int64_t left = size(); left > 0 && sound; --left) {
            Renewal& renewal = values.emplace_back();
            id(renewal.item);
            for (std::int64_t clocks = size(); clocks > 0 && sound; --clocks) {
                name(key, renewal.clocks.emplace_back());
            }
            sound = sound && read_extra(in_, renewal.extra);
        }
    }

    void body(std::string_view, std::shared_ptr<const Body>& value) override {
        if (whole() != 1) return;
        auto body = std::make_shared<Body>();
        sound = sound && read_body(in_, *body, true);
        value = std::move(body);
    }

    [[nodiscard]] std::int64_t whole() {
        std::int64_t number = 0;
        sound = sound && read_whole(in_, number);
        return sound ? number : 0;
    }

    [[nodiscard]] std::int64_t size() {
        const std::int64_t number = whole();
        sound = sound && number >= 0 && number <= most_items;
        return sound ? number : 0;
    }

    bool sound{true};

  private:
    std::string_view& in_;
};

void write_body(const Body& body, std::string& out) {
    BinaryWriter writer{out};
    // A record of a known kind may hold a word that is not known: then its fields are extra.
    write_whole(std::holds_alternative<UnknownKind>(body.fields) ? 0 : 1, out);
    write_text(kind_name(body.fields), out);
    write_whole(body.on.day_number, out);
    write_whole(static_cast<std::int64_t>(body.about.size()), out);
    for (const base::Id& id : body.about)
        writer.id(id);
    visit_fields(writer, body.fields);
    write_extra(body.extra, out);
}

bool read_body(std::string_view& in, Body& body, bool nested) {
    BinaryReader reader{in};
    std::string kind;
    const std::int64_t understood = reader.whole();
    if (!reader.sound || understood < 0 || understood > 1 || !read_text(in, kind)) return false;
    body.on.day_number = static_cast<std::int32_t>(reader.whole());
    for (std::int64_t left = reader.size(); left > 0 && reader.sound; --left)
        reader.id(body.about.emplace_back());
    body.fields = understood == 1 ? empty_fields(kind) : UnknownKind{kind};
    if (understood == 1 && std::holds_alternative<UnknownKind>(body.fields)) return false;
    if (nested && std::holds_alternative<Correction>(body.fields)) return false;
    visit_fields(reader, body.fields);
    return reader.sound && read_extra(in, body.extra);
}

}  // namespace

void write_binary(const Fact& fact, std::string& out) {
    BinaryWriter writer{out};
    writer.id(fact.id);
    write_whole(fact.stamp.wall_ms, out);
    write_whole(fact.stamp.tick, out);
    write_text(fact.stamp.device, out);
    write_text(fact.by, out);
    write_body(fact.body, out);
}

bool read_binary(std::string_view& in, Fact& fact) {
    BinaryReader reader{in};
    reader.id(fact.id);
    fact.stamp.wall_ms = reader.whole();
    fact.stamp.tick = static_cast<std::int32_t>(reader.whole());
    return reader.sound && read_text(in, fact.stamp.device) && read_text(in, fact.by) &&
           read_body(in, fact.body, false);
}

}  // namespace twoclocks::facts
