#include "wasm/app/ledger.hpp"

#include <algorithm>

#include "engine/base/hash.hpp"
#include "engine/facts/binary.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"

namespace twoclocks::canvas {
namespace {

using facts::Fact;
using facts::Json;

constexpr std::string_view snapshot_mark = "TwoClocksSnapshot";

[[nodiscard]] std::string lines_of(const std::vector<Fact>& facts) {
    std::string out;
    for (const Fact& fact : facts)
        out += print_fact(fact) + '\n';
    return out;
}

[[nodiscard]] std::int64_t whole_of(const Json& header, std::string_view key) {
    const Json* value = header.find(key);
    return value != nullptr && value->type == Json::Type::whole ? value->whole : 0;
}

[[nodiscard]] std::string text_of(const Json& header, std::string_view key) {
    const Json* value = header.find(key);
    return value != nullptr ? value->text : std::string{};
}

[[nodiscard]] std::vector<Fact> facts_of(std::string_view lines, base::Problems& problems) {
    std::vector<Fact> out;
    for (std::int32_t line = 2; !lines.empty(); ++line) {
        const std::size_t end = lines.find('\n');
        base::Result<Fact> fact = facts::parse_fact(lines.substr(0, end), line);
        if (fact) {
            out.push_back(std::move(fact.value()));
        } else {
            problems.insert(problems.end(), fact.problems().begin(), fact.problems().end());
        }
        lines = end == std::string_view::npos ? std::string_view{} : lines.substr(end + 1);
    }
    return out;
}

void write_facts(const std::vector<Fact>& facts, std::string& out) {
    facts::write_whole(static_cast<std::int64_t>(facts.size()), out);
    for (const Fact& fact : facts)
        facts::write_binary(fact, out);
}

[[nodiscard]] bool read_facts(std::string_view& in, std::vector<Fact>& facts) {
    std::int64_t count = 0;
    if (!facts::read_whole(in, count) || count < 0 || count > facts::most_facts) return false;
    for (; count > 0; --count) {
        if (!facts::read_binary(in, facts.emplace_back())) return false;
    }
    return true;
}

[[nodiscard]] bool read_batch(std::string_view& in, Batch& batch) {
    std::int64_t number = 0;
    std::int64_t aside = 0;
    const bool head = facts::read_whole(in, number) && facts::read_text(in, batch.file_name) &&
                      facts::read_whole(in, batch.wall_ms) && facts::read_whole(in, aside);
    batch.number = static_cast<std::int32_t>(number);
    batch.aside = aside == 1;
    return head && read_facts(in, batch.facts);
}

}  // namespace

std::int32_t Ledger::next_batch() const {
    std::int32_t last = 0;
    for (const Batch& batch : batches_)
        last = std::max(last, batch.number);
    return last + 1;
}

std::string Ledger::own_segment(const std::vector<Fact>& facts) {
    return "{\"segment\":\"facts\"}\n" + lines_of(facts);
}

std::string Ledger::import_segment(std::string_view file_name,
                                   std::int64_t wall_ms,
                                   const std::vector<Fact>& facts) const {
    std::string out = "{\"segment\":\"import\",\"batch\":" + std::to_string(next_batch()) +
                      ",\"at\":" + std::to_string(wall_ms) + ",\"name\":";
    facts::print_json_text(file_name, out);
    return out + "}\n" + lines_of(facts);
}

std::string Ledger::aside_segment(std::int32_t batch, bool aside) {
    return "{\"segment\":\"aside\",\"batch\":" + std::to_string(batch) +
           ",\"aside\":" + (aside ? "true" : "false") + "}\n";
}

base::Problems Ledger::take_in(std::string_view segment) {
    base::Problems problems;
    const std::size_t end = segment.find('\n');
    const base::Result<Json> header = facts::read_json(segment.substr(0, end), 1);
    if (!header) return header.problems();
    const std::string kind = text_of(header.value(), "segment");
    const auto number = static_cast<std::int32_t>(whole_of(header.value(), "batch"));
    if (kind == "aside") {
        const Json* aside = header.value().find("aside");
        take_aside(number, aside != nullptr && aside->truth);
        return problems;
    }
    const std::string_view lines =
        end == std::string_view::npos ? std::string_view{} : segment.substr(end + 1);
    std::vector<Fact> facts = facts_of(lines, problems);
    for (const Fact& fact : facts)
        visible_.add(fact);
    if (kind == "import") {
        batches_.push_back({number,
                            text_of(header.value(), "name"),
                            whole_of(header.value(), "at"),
                            false,
                            std::move(facts)});
    } else {
        own_.insert(own_.end(), facts.begin(), facts.end());
    }
    return problems;
}

void Ledger::take_aside(std::int32_t number, bool aside) {
    for (Batch& batch : batches_) {
        if (batch.number == number) batch.aside = aside;
    }
    rebuild();
}

void Ledger::rebuild() {
    visible_ = {};
    for (const Fact& fact : own_)
        visible_.add(fact);
    for (const Batch& batch : batches_) {
        if (batch.aside) continue;
        for (const Fact& fact : batch.facts)
            visible_.add(fact);
    }
}

std::string Ledger::snapshot() const {
    std::string body;
    write_facts(own_, body);
    facts::write_whole(static_cast<std::int64_t>(batches_.size()), body);
    for (const Batch& batch : batches_) {
        facts::write_whole(batch.number, body);
        facts::write_text(batch.file_name, body);
        facts::write_whole(batch.wall_ms, body);
        facts::write_whole(batch.aside ? 1 : 0, body);
        write_facts(batch.facts, body);
    }
    std::string out{snapshot_mark};
    facts::write_whole(facts::binary_version, out);
    facts::write_whole(base::crc32c(body), out);
    return out + body;
}

bool Ledger::take_snapshot(std::string_view bytes) {
    if (!bytes.starts_with(snapshot_mark)) return false;
    bytes.remove_prefix(snapshot_mark.size());
    std::int64_t version = 0;
    std::int64_t crc = 0;
    if (!facts::read_whole(bytes, version) || version != facts::binary_version) return false;
    if (!facts::read_whole(bytes, crc) || crc != base::crc32c(bytes)) return false;
    Ledger taken;
    std::int64_t count = 0;
    if (!read_facts(bytes, taken.own_) || !facts::read_whole(bytes, count) || count < 0)
        return false;
    for (; count > 0; --count) {
        if (!read_batch(bytes, taken.batches_.emplace_back())) return false;
    }
    taken.rebuild();
    *this = std::move(taken);
    return true;
}

}  // namespace twoclocks::canvas
