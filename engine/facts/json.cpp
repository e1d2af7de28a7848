#include "engine/facts/json.hpp"

#include <nlohmann/json.hpp>
#include <optional>

namespace twoclocks::facts {
namespace {

using base::Trouble;

/// Builds a Json from the library's events and stops at the first thing the journal does not allow.
class Builder final : public nlohmann::json_sax<nlohmann::json> {
  public:
    explicit Builder(std::int32_t line) : line_(line) {}

    bool null() override { return refuse(Trouble::line_null); }

    bool boolean(bool truth) override {
        Json value;
        value.type = Json::Type::boolean;
        value.truth = truth;
        return put(std::move(value));
    }

    bool number_integer(number_integer_t number) override {
        if (number < -greatest_whole) return refuse(Trouble::line_number_not_whole);
        return put_whole(number);
    }

    bool number_unsigned(number_unsigned_t number) override {
        if (number > static_cast<number_unsigned_t>(greatest_whole)) {
            return refuse(Trouble::line_number_not_whole);
        }
        return put_whole(static_cast<std::int64_t>(number));
    }

    bool number_float(number_float_t, const string_t&) override {
        return refuse(Trouble::line_number_not_whole);
    }

    bool string(string_t& text) override {
        if (text.size() > static_cast<std::size_t>(longest_note_bytes)) {
            return refuse(Trouble::line_text_too_long);
        }
        Json value;
        value.type = Json::Type::text;
        value.text = std::move(text);
        return put(std::move(value));
    }

    bool binary(binary_t&) override { return refuse(Trouble::line_not_json); }

    bool start_object(std::size_t) override { return open(Json::Type::object); }

    bool end_object() override { return close(); }

    bool start_array(std::size_t) override { return open(Json::Type::list); }

    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        if (name.size() > static_cast<std::size_t>(longest_text_bytes)) {
            return refuse(Trouble::line_text_too_long);
        }
        if (open_.back().find(name) != nullptr) {
            return refuse(Trouble::line_double_key, name);
        }
        open_.back().members.emplace_back(std::move(name), Json{});
        return true;
    }

    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
        return refuse(Trouble::line_not_json);
    }

    [[nodiscard]] base::Result<Json> finish(bool parsed) {
        if (problem_) return *problem_;
        if (!parsed || !done_) return make(Trouble::line_not_json, {});
        if (done_->type != Json::Type::object) return make(Trouble::line_not_object, {});
        return std::move(*done_);
    }

  private:
    [[nodiscard]] base::Problem make(Trouble code, std::string_view what) const {
        base::Problem problem = base::trouble(code);
        if (!what.empty()) problem.args = {{base::ArgType::text, 0, 0, std::string{what}}};
        problem.line = line_;
        return problem;
    }

    bool refuse(Trouble code, std::string_view what = {}) {
        if (!problem_) problem_ = make(code, what);
        return false;
    }

    bool put_whole(std::int64_t number) {
        Json value;
        value.type = Json::Type::whole;
        value.whole = number;
        return put(std::move(value));
    }

    bool put(Json value) {
        if (open_.empty()) {
            done_ = std::move(value);
        } else if (open_.back().type == Json::Type::list) {
            open_.back().items.push_back(std::move(value));
        } else {
            open_.back().members.back().second = std::move(value);
        }
        return true;
    }

    bool open(Json::Type type) {
        if (open_.size() >= static_cast<std::size_t>(deepest))
            return refuse(Trouble::line_too_deep);
        open_.emplace_back().type = type;
        return true;
    }

    bool close() {
        Json value = std::move(open_.back());
        open_.pop_back();
        return put(std::move(value));
    }

    std::int32_t line_;
    std::vector<Json> open_;
    std::optional<Json> done_;
    std::optional<base::Problem> problem_;
};

void print_members(const Json& value, std::string& out) {
    out += '{';
    bool first = true;
    for (const auto& [key, member] : value.members) {
        if (!first) out += ',';
        first = false;
        print_json_text(key, out);
        out += ':';
        print_json(member, out);
    }
    out += '}';
}

void print_items(const Json& value, std::string& out) {
    out += '[';
    bool first = true;
    for (const Json& item : value.items) {
        if (!first) out += ',';
        first = false;
        print_json(item, out);
    }
    out += ']';
}

void print_control(unsigned char byte, std::string& out) {
    constexpr std::string_view digits = "0123456789abcdef";
    out += "\\u00";
    out += digits[byte >> 4U];
    out += digits[byte & 15U];
}

}  // namespace

Json::Json() = default;
Json::Json(const Json& other) = default;
Json::Json(Json&& other) noexcept = default;
Json& Json::operator=(const Json& other) = default;
Json& Json::operator=(Json&& other) noexcept = default;
Json::~Json() = default;

const Json* Json::find(std::string_view key) const {
    for (const auto& member : members) {
        if (member.first == key) return &member.second;
    }
    return nullptr;
}

base::Result<Json> read_json(std::string_view text, std::int32_t line) {
    Builder builder{line};
    // The library takes a byte order mark and stops at a zero byte; a journal line holds neither.
    const bool foreign =
        text.starts_with("\xEF\xBB\xBF") || text.find('\0') != std::string_view::npos;
    const bool parsed =
        !foreign &&
        nlohmann::json::sax_parse(
            text.begin(), text.end(), &builder, nlohmann::json::input_format_t::json, true);
    return builder.finish(parsed);
}

void print_json_text(std::string_view text, std::string& out) {
    out += '"';
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        switch (letter) {
            case '"':
                out += "\\\"";
                break;
            case '\\':
                out += "\\\\";
                break;
            case '\b':
                out += "\\b";
                break;
            case '\f':
                out += "\\f";
                break;
            case '\n':
                out += "\\n";
                break;
            case '\r':
                out += "\\r";
                break;
            case '\t':
                out += "\\t";
                break;
            default:
                if (byte < 0x20U) {
                    print_control(byte, out);
                } else {
                    out += letter;
                }
        }
    }
    out += '"';
}

void print_json(const Json& value, std::string& out) {
    switch (value.type) {
        case Json::Type::boolean:
            out += value.truth ? "true" : "false";
            break;
        case Json::Type::whole:
            out += std::to_string(value.whole);
            break;
        case Json::Type::text:
            print_json_text(value.text, out);
            break;
        case Json::Type::list:
            print_items(value, out);
            break;
        case Json::Type::object:
            print_members(value, out);
            break;
    }
}

}  // namespace twoclocks::facts
