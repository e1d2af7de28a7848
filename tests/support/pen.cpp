#include "tests/support/pen.hpp"

#include "catch_amalgamated.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <utility>

#include "engine/facts/parse.hpp"

namespace twoclocks::support {

base::Date day(const std::string& text) {
    const base::Result<base::Date> read = base::parse_date(text);
    INFO("date " << text);
    REQUIRE(read.ok());
    return read.value();
}

base::Id id_of(std::uint64_t number) {
    return base::make_id(1'600'000'000'000, 0, number);
}

facts::Body body(base::Date on, std::vector<base::Id> about, facts::Fields fields) {
    return {on, std::move(about), std::move(fields), {}};
}

facts::Reading reads(std::int64_t tenths) {
    facts::Reading out;
    out.reads = base::tenths(tenths);
    return out;
}

facts::WorkDone renews(std::vector<base::Id> items, std::int64_t total_tenths) {
    facts::WorkDone out;
    out.what = "Inspection";
    for (const base::Id& item : items)
        out.renews.push_back({item, {}});
    if (total_tenths >= 0) out.total = base::tenths(total_tenths);
    return out;
}

facts::Directive directive(const std::string& number) {
    facts::Directive out;
    out.number = number;
    out.applies = facts::Applicability::applies;
    return out;
}

facts::CostLine cost_line(const std::string& key) {
    facts::CostLine out;
    out.line = key;
    return out;
}

facts::Core core(const std::string& key) {
    facts::Core out;
    out.core = key;
    return out;
}

facts::ClosingPoint closing(const std::string& key) {
    facts::ClosingPoint out;
    out.point = key;
    return out;
}

facts::Route route(const std::string& key) {
    facts::Route out;
    out.route = key;
    return out;
}

facts::LimitSet limit(std::int64_t whole_hours, std::int32_t months) {
    facts::LimitSet out;
    if (whole_hours > 0) out.hours = base::hours(whole_hours);
    if (months > 0) out.months = months;
    return out;
}

Pen::Pen(std::string device, std::int64_t wall_ms) : device_(std::move(device)), wall_ms_(wall_ms) {
    for (const char letter : device_) {
        salt_ = salt_ * 31 + static_cast<std::uint64_t>(static_cast<unsigned char>(letter));
    }
}

facts::Fact Pen::write(base::Date on, std::vector<base::Id> about, facts::Fields fields) {
    constexpr std::int64_t minute_ms = 60'000;
    ++count_;
    wall_ms_ += minute_ms;
    facts::Fact out;
    out.id = base::make_id(wall_ms_, count_ & 0xFFFU, salt_ << 24U | count_);
    out.stamp = {wall_ms_, 0, device_};
    out.by = "Tester " + device_;
    out.body = body(on, std::move(about), std::move(fields));
    return out;
}

facts::Fact Pen::add(base::Date on, std::vector<base::Id> about, facts::Fields fields) {
    facts::Fact out = write(on, std::move(about), std::move(fields));
    out.body.about.push_back(out.id);
    return out;
}

facts::Fact Pen::correct(const facts::Fact& fact, facts::Body instead) {
    const std::vector<base::Id> about{facts::aircraft_of(fact.body)};
    return write(fact.body.on,
                 about,
                 facts::Correction{
                     {fact.id, 0}, "Misread", std::make_shared<facts::Body>(std::move(instead))});
}

facts::Fact Pen::correct(const facts::Fact& fact, facts::Fields instead) {
    return correct(fact, body(fact.body.on, fact.body.about, std::move(instead)));
}

facts::Fact Pen::withdraw(const facts::Fact& fact) {
    return write(fact.body.on,
                 {facts::aircraft_of(fact.body)},
                 facts::Withdrawal{{fact.id, 0}, "Never happened"});
}

facts::Fact Pen::answer(base::Id aircraft,
                        std::vector<facts::Ref> settles,
                        std::vector<facts::Ref> keeps) {
    return write(day("2025-01-15"),
                 {aircraft},
                 facts::Answer{std::move(settles), std::move(keeps), "Looked at the logbook"});
}

facts::Journal journal_of(const std::vector<facts::Fact>& facts) {
    facts::Journal out;
    for (const facts::Fact& fact : facts)
        out.add(fact);
    return out;
}

facts::Journal journal_from(const std::string& text) {
    const facts::Parsed parsed = facts::parse_journal(text);
    REQUIRE(parsed.ours);
    REQUIRE(parsed.problems.empty());
    return journal_of(parsed.facts);
}

std::string file_text(const std::string& path) {
    std::ifstream file{std::string{HOUSE_ROOT} + '/' + path, std::ios::binary};
    INFO("file " << path);
    REQUIRE(file.good());
    return {std::istreambuf_iterator<char>{file}, {}};
}

std::vector<std::string> demo_files() {
    std::vector<std::string> out;
    const std::filesystem::path folder = std::filesystem::path{HOUSE_ROOT} / "demo";
    for (const auto& entry : std::filesystem::directory_iterator{folder}) {
        if (entry.path().extension() == ".jsonl") {
            out.push_back(std::string{"demo/"}.append(entry.path().filename().string()));
        }
    }
    std::sort(out.begin(), out.end());
    return out;
}

}  // namespace twoclocks::support
