// What the fields of records about parts are called.
#include "wasm/app/form_kinds.hpp"

#include <array>

namespace twoclocks::canvas {

using base::Word;

Word part_field_label(std::string_view key) {
    struct Row {
        std::string_view key;
        Word label;
    };

    constexpr std::array rows{Row{"part_number", Word::field_part_number},
                              Row{"tsn", Word::field_tsn},
                              Row{"tso", Word::field_tso},
                              Row{"overhauls", Word::field_overhauls},
                              Row{"cured", Word::field_cured},
                              Row{"shipped", Word::field_shipped},
                              Row{"condition", Word::field_condition},
                              Row{"papers", Word::field_papers},
                              Row{"owner", Word::field_owner},
                              Row{"lent_until", Word::field_lent_until},
                              Row{"position", Word::field_position},
                              Row{"host_total", Word::field_host_total},
                              Row{"host_landings", Word::field_host_landings},
                              Row{"host_starts", Word::field_host_starts},
                              Row{"proof", Word::field_proof},
                              Row{"lent_to", Word::field_lent_to},
                              Row{"return_by", Word::field_return_by},
                              Row{"document", Word::field_document}};
    for (const Row& row : rows) {
        if (row.key == key) return row.label;
    }
    return Word::field_other;
}

std::vector<Word> condition_words() {
    return {Word::condition_new,
            Word::condition_overhauled,
            Word::condition_repaired,
            Word::condition_inspected,
            Word::condition_as_removed,
            Word::condition_unknown,
            Word::condition_unserviceable};
}

}  // namespace twoclocks::canvas
