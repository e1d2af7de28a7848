// Where the person is: pages opened, exchanged and left.
#include "wasm/app/inside.hpp"

#include <algorithm>

namespace twoclocks::canvas {

void AppState::Inside::open(Place place) {
    sheet = std::monostate{};
    const bool is_alike =
        place.kind == here().kind && place.of == here().of && place.kind != Place::Kind::form;
    if (is_alike && place.subject == here().subject) return;
    const bool failed = std::any_of(
        notices.begin(), notices.end(), [](const Notice& notice) { return notice.urgent; });
    if (!failed) notices.clear();
    // Beside a list the next choice takes the place of the last one: one Back leads out.
    if (two_panes && is_alike) {
        here() = place;
        return;
    }
    places.push_back(place);
    host.push_page();
}

void AppState::Inside::replace(Place place) {
    here() = place;
    sheet = std::monostate{};
}

void AppState::Inside::close() {
    if (!std::holds_alternative<std::monostate>(sheet)) {
        sheet = std::monostate{};
    } else if (places.size() > 1) {
        places.pop_back();
    }
    dirty = true;
}

}  // namespace twoclocks::canvas
