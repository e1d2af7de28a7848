// The page of files: what is kept, where, and what is in no file yet.
#include "wasm/app/inside.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/facts/journal.hpp"
#include "engine/views/record.hpp"

namespace twoclocks::canvas {

using base::Word;

namespace {

constexpr std::int64_t ms_per_day = 24LL * 60 * 60 * 1000;

// When the fleet says that there is no copy of what was written here. Our choice.
constexpr std::int64_t remind_after_days = 14;
constexpr std::int64_t remind_after_records = 25;

[[nodiscard]] base::Date day_of(std::int64_t wall_ms) {
    return {static_cast<std::int32_t>(wall_ms / ms_per_day)};
}

/// Records written on this device that were never handed over as a file.
struct NotCopied {
    std::int64_t records{0};
    std::int64_t oldest_ms{0};  // when the first of them was written
};

[[nodiscard]] NotCopied not_copied(const Inside& in) {
    NotCopied out;
    for (const facts::Fact& fact : in.ledger.own()) {
        const std::int64_t written = fact.stamp.wall_ms;
        if (in.kept.exported_at_ms && written <= *in.kept.exported_at_ms) continue;
        out.oldest_ms = out.records == 0 ? written : std::min(out.oldest_ms, written);
        ++out.records;
    }
    return out;
}

/// Megabytes, the used ones rounded up.
[[nodiscard]] base::Arg megabytes(std::int64_t bytes, bool up) {
    constexpr std::int64_t megabyte = 1'000'000;
    return base::whole_arg((bytes + (up ? megabyte - 1 : 0)) / megabyte);
}

[[nodiscard]] std::vector<base::Message> storage_lines(const Inside& in) {
    const Kept& kept = in.kept;
    std::vector<base::Message> out{{Word::files_kept, {}}};
    if (!kept.promised)
        out.push_back({Word::files_unasked, {}});
    else
        out.push_back({*kept.promised ? Word::files_promised : Word::files_not_promised, {}});
    if (kept.used_bytes && kept.room_bytes) {
        out.push_back({Word::files_room,
                       {megabytes(*kept.used_bytes, true), megabytes(*kept.room_bytes, false)}});
    }
    const std::string device = views::short_device(in.signer.device());
    out.push_back({Word::files_device, {base::text_arg(device)}});
    return out;
}

[[nodiscard]] BatchView batch_view(const Batch& batch) {
    const auto count = static_cast<std::int64_t>(batch.facts.size());
    return {batch.number,
            batch.file_name,
            {Word::batch_detail, {base::whole_arg(count), base::day_arg(day_of(batch.wall_ms))}},
            batch.aside};
}

}  // namespace

base::Message copy_reminder(const Inside& in) {
    const NotCopied missing = not_copied(in);
    if (missing.records == 0) return {Word::blank, {}};
    const bool old = in.wall_ms - missing.oldest_ms >= remind_after_days * ms_per_day;
    if (!old && missing.records < remind_after_records) return {Word::blank, {}};
    return {Word::export_reminder,
            {base::whole_arg(missing.records), base::day_arg(day_of(missing.oldest_ms))}};
}

FilesPage files_page(const Inside& in) {
    FilesPage page;
    const facts::Journal& journal = in.ledger.visible();
    page.summary = {Word::files_summary,
                    {base::whole_arg(static_cast<std::int64_t>(in.fleet.size())),
                     base::whole_arg(static_cast<std::int64_t>(journal.facts().size()))}};
    constexpr std::size_t short_form = 16;
    page.fingerprint = {Word::as_told,
                        {base::text_arg(facts::fingerprint(journal).substr(0, short_form))}};
    const base::Result<base::Date> exported = base::parse_date(in.kept.last_export);
    page.last_export =
        exported ? base::Message{Word::files_last_export, {base::day_arg(exported.value())}}
                 : base::Message{Word::files_never_exported, {}};
    const std::int64_t missing = not_copied(in).records;
    page.not_copied = {Word::blank, {}};
    if (missing > 0) page.not_copied = {Word::files_new_records, {base::whole_arg(missing)}};
    for (const Batch& batch : in.ledger.batches())
        page.batches.push_back(batch_view(batch));
    if (in.import) page.preview = in.import->preview;
    page.theme = in.theme;
    page.text_percent = in.text_percent;
    page.storage = storage_lines(in);
    const std::string& author = in.signer.author();
    page.author = author.empty() ? base::Message{Word::files_unsigned, {}}
                                 : base::Message{Word::files_signed, {base::text_arg(author)}};
    return page;
}

void export_journal(AppState::Inside& in) {
    const std::string today = base::print_date(in.today);
    in.host.hand_over_file("two-clocks-" + today + ".jsonl",
                           facts::print_journal(in.ledger.visible()));
    in.kept.last_export = today;
    in.kept.exported_at_ms = in.wall_ms;
    in.host.keep_setting("last_export", today);
    in.host.keep_setting("exported_at", std::to_string(in.wall_ms));
    in.notify({Word::export_done, {}});
}

}  // namespace twoclocks::canvas
