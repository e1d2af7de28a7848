#include "engine/views/record_sale.hpp"

#include <array>

#include "engine/views/labelled.hpp"

namespace twoclocks::views {

using base::Message;
using base::Word;

Word closing_topic_word(facts::ClosingTopic topic) {
    constexpr std::array words{Word::closing_finding,
                               Word::closing_lien,
                               Word::closing_tax,
                               Word::closing_damage,
                               Word::closing_core,
                               Word::closing_warranty,
                               Word::closing_records,
                               Word::closing_review,
                               Word::closing_registration,
                               Word::closing_insurance,
                               Word::closing_other};
    return word_at(words, topic);
}

Word closing_payer_word(facts::ClosingPayer payer) {
    constexpr std::array words{
        Word::payer_open, Word::payer_seller, Word::payer_buyer, Word::payer_shared};
    return word_at(words, payer);
}

base::Arg closing_label(const facts::ClosingPoint& point) {
    return point.text.empty() ? base::word_arg(closing_topic_word(point.topic))
                              : base::text_arg(point.text);
}

Message sale_what(const facts::ItemPrice& fields) {
    return {Word::record_item_price,
            {fields.price ? base::money_arg(*fields.price) : base::word_arg(Word::not_known)}};
}

Message sale_what(const facts::ClosingPoint& fields) {
    const Word word = fields.left_out  ? Word::record_closing_left_out
                      : fields.settled ? Word::record_closing_settled
                                       : Word::record_closing;
    return {word, {closing_label(fields)}};
}

std::vector<Message> sale_more(const facts::ItemPrice& fields) {
    Labelled lines;
    lines.text(Word::field_said_by, fields.said_by);
    return lines.out;
}

std::vector<Message> sale_more(const facts::ClosingPoint& fields) {
    Labelled lines;
    lines.word(Word::field_closing_topic, closing_topic_word(fields.topic));
    lines.date(Word::field_point_until, fields.until);
    lines.money(Word::field_point_cost, fields.cost);
    lines.word(Word::field_payer, closing_payer_word(fields.payer));
    lines.text(Word::field_paper, fields.paper);
    return lines.out;
}

}  // namespace twoclocks::views
