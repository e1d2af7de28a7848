// The page "Money", and what is begun from it.
#pragma once

#include "wasm/app/inside.hpp"

namespace twoclocks::canvas {

/// The campaigns that the page is made from: the one that is planned, then each route.
[[nodiscard]] std::vector<LifeAsked> money_asked(const views::Assessed& aircraft);

/// The page; worked out once, not at every look at it.
[[nodiscard]] MoneyPage money_page(AppState::Inside& in, const views::Assessed& aircraft);

/// What opens it, and what is recorded at one tap: the usual lines, or those of the last campaign.
void open_page(AppState::Inside& in, const intent::OpenMoney& intent);
void open_page(AppState::Inside& in, const intent::UsualLines& intent);
void open_page(AppState::Inside& in, const intent::TakeOverLines& intent);

}  // namespace twoclocks::canvas
