// A paper while its blocks are put on it.
#pragma once

#include "engine/base/message_args.hpp"
#include "engine/views/paper.hpp"

namespace twoclocks::views {

class Sheet {
  public:
    Sheet(base::Message title, const PaperHead& head, const base::Region& region)
        : region_(region) {
        paper_.title = std::move(title);
        paper_.plate = head.plate;
        paper_.is_invented = head.is_invented;
        constexpr std::size_t letters = 16;
        paper_.as_of = said(
            {base::Word::paper_as_of,
             {base::day_arg(head.today), base::text_arg(head.fingerprint.substr(0, letters))}});
    }

    /// Text of a message; nothing of a blank one.
    /// Units: text as a person reads it. Errors: none. Source: our choice.
    [[nodiscard]] std::string said(const base::Message& message) const {
        return message.word == base::Word::blank ? std::string{} : base::say(message, region_);
    }

    /// A block of lines, where any says something.
    /// Units: none. Errors: none. Source: our choice.
    void lines(base::Message title, std::vector<base::Message> lines) {
        std::erase_if(lines, [](const auto& line) { return line.word == base::Word::blank; });
        if (lines.empty()) return;
        paper_.blocks.push_back({std::move(title), std::move(lines), {}});
    }

    /// What is wrong, and what to do about it.
    /// Units: none. Errors: none. Source: our choice.
    void faults(const std::vector<base::Problem>& faults) {
        PaperBlock block;
        for (const base::Problem& fault : faults)
            block.rows.push_back(
                {base::say_what(fault, region_), base::say_remedy(fault, region_)});
        put(std::move(block));
    }

    /// A block that holds something.
    /// Units: none. Errors: none. Source: our choice.
    void put(PaperBlock block) {
        if (block.rows.empty() && block.lines.empty()) return;
        paper_.blocks.push_back(std::move(block));
    }

    /// Several messages in one cell, a line each.
    /// Units: text as a person reads it. Errors: none. Source: our choice.
    [[nodiscard]] std::string cell(const std::vector<base::Message>& lines,
                                   const std::vector<base::Problem>& notes = {}) const {
        std::string out;
        const auto add = [&](const std::string& line) {
            if (!line.empty()) out += (out.empty() ? "" : "\n") + line;
        };
        for (const base::Message& line : lines)
            add(said(line));
        for (const base::Problem& note : notes)
            add(base::say_what(note, region_));
        return out;
    }

    /// A word before what it names, where that says something.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] base::Message labelled(base::Word label, const base::Message& told) const {
        const std::string text = said(told);
        if (text.empty()) return {base::Word::blank, {}};
        return {base::Word::record_labelled, {base::word_arg(label), base::text_arg(text)}};
    }

    /// The whole paper, with the short caution below.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] Paper done(std::vector<base::Message> notes) {
        paper_.notes = std::move(notes);
        paper_.notes.push_back({base::Word::caution_short, {}});
        return std::move(paper_);
    }

  private:
    const base::Region& region_;
    Paper paper_;
};

}  // namespace twoclocks::views
