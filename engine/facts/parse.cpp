#include "engine/facts/parse.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::facts {
namespace {

using base::Problem;
using base::Trouble;

[[nodiscard]] Problem at_line(Trouble code, std::int32_t line) {
    Problem problem = base::trouble(code, {base::whole_arg(line)});
    problem.line = line;
    return problem;
}

void read_header(std::string_view text, Parsed& out) {
    const base::Result<Json> header = read_json(text, 1);
    const Json* name = header ? header.value().find("journal") : nullptr;
    const Json* version = header ? header.value().find("version") : nullptr;
    if (name == nullptr || name->text != "twoclocks" || version == nullptr ||
        version->type != Json::Type::whole || version->whole < 1) {
        out.problems.push_back(at_line(Trouble::file_foreign, 1));
        return;
    }
    out.ours = true;
    out.newer = version->whole > journal_version;
    if (out.newer) out.problems.push_back(at_line(Trouble::file_newer, 1));
}

void read_line(std::string_view text, std::int32_t line, bool last_and_open, Parsed& out) {
    base::Result<Fact> fact = parse_fact(text, line, out.problems);
    if (fact) {
        out.facts.push_back(std::move(fact.value()));
    } else if (last_and_open && fact.problems().front().code == Trouble::line_not_json) {
        out.problems.push_back(at_line(Trouble::file_torn, line));
    } else {
        out.problems.insert(out.problems.end(), fact.problems().begin(), fact.problems().end());
    }
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

Parsed parse_journal(std::string_view text) {
    Parsed out;
    if (text.size() > static_cast<std::size_t>(largest_file_bytes)) {
        out.problems.push_back(at_line(Trouble::file_too_large, 0));
        return out;
    }
    if (text.empty()) {
        out.problems.push_back(at_line(Trouble::file_empty, 0));
        return out;
    }
    for (std::int32_t line = 1; !text.empty(); ++line) {
        const std::size_t end = text.find('\n');
        std::string_view row = text.substr(0, end);
        const bool open_end = end == std::string_view::npos;
        text = open_end ? std::string_view{} : text.substr(end + 1);
        if (row.ends_with('\r')) row.remove_suffix(1);
        if (line == 1) {
            read_header(row, out);
            if (!out.ours) return out;
        } else if (row.empty()) {
            continue;
        } else if (out.facts.size() >= static_cast<std::size_t>(most_facts)) {
            out.problems.push_back(at_line(Trouble::file_too_many, line));
            return out;
        } else {
            read_line(row, line, open_end, out);
        }
    }
    return out;
}

std::string print_header() {
    return "{\"journal\":\"twoclocks\",\"version\":" + std::to_string(journal_version) + "}";
}

}  // namespace twoclocks::facts
