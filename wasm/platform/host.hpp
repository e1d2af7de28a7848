// What the app asks of the page around it. The browser is one host (platform/browser.cpp, the only
// file
// that talks to JavaScript); a test is another, and can make every call fail.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace twoclocks::canvas {

/// What a field holds, and with it which keyboard and which real input element it wants. The order
/// is known to web/bridge.js.
enum class FieldKind : std::uint8_t {
    text,
    note,     // several lines, grows
    decimal,  // a number with a decimal sign
    whole,    // a whole number
    date,
    hours,   // 12.3 or 12:18
    money,   // an amount, its currency beside it
    code,    // serial and part numbers, registrations: capitals, no correction
    search,  // filters a list
    secret,  // a password: never shown, never kept
    choice,  // one of several: nothing is typed
    file
};

/// A field that is now being edited: the host lays a real input element over `left`..`height`.
struct FieldRequest {
    std::string id;
    std::string label;
    std::string text;
    FieldKind kind{FieldKind::text};
    float left_px{0};
    float top_px{0};
    float width_px{0};
    float height_px{0};
};

/// A file to lock or to open, under its name.
struct LockRequest {
    std::string name;
    std::string bytes;
    std::string password;
};

/// Everything the app needs from outside. No call blocks; answers arrive as calls on App.
class Host {
  public:
    virtual ~Host() = default;
    /// Stores bytes as one segment, strictly durable. Answered by App::committed(token, ok,
    /// reason).
    virtual void commit(std::uint32_t token, std::string_view bytes) = 0;
    /// Keeps a snapshot that covers every segment committed so far. Never answered; may be dropped.
    virtual void keep_snapshot(std::string_view bytes) = 0;
    /// Hands a file to the person (share sheet where there is one, else a download).
    virtual void hand_over_file(std::string_view name, std::string_view bytes) = 0;
    /// Opens the printing of the system with a paper, as a page of HTML, by a name. Never answered.
    virtual void print_paper(std::string_view name, std::string_view html) = 0;
    /// Locks bytes with a password, then hands them over. Answered by App::lock_told.
    virtual void hand_over_locked(const LockRequest& request) = 0;
    /// Opens locked bytes. Answered by App::file_chosen with what was in them, or by
    /// App::lock_told.
    virtual void unlock(const LockRequest& request) = 0;
    /// Lets the person choose a file. Answered by App::file_chosen, or not at all.
    virtual void choose_file() = 0;
    /// Fetches the invented fleet that ships with the page. Answered by App::file_chosen.
    virtual void fetch_demo() = 0;
    /// Puts a real input over a field (called inside the tap, so that a phone raises its keyboard).
    virtual void edit_field(const FieldRequest& request) = 0;
    virtual void close_field() = 0;
    /// The semantic mirror, as JSON (see scene.hpp).
    virtual void mirror(std::string_view json) = 0;
    /// Speaks politely to a screen reader.
    virtual void announce(std::string_view text) = 0;
    /// A page was opened: one more step for the Back button. `go_back` is answered by App::back.
    virtual void push_page() = 0;
    virtual void go_back() = 0;
    /// Keeps a look on this device (theme, text size). Looks only, never anything that changes a
    /// figure.
    virtual void keep_setting(std::string_view name, std::string_view value) = 0;
    /// Keeps what is being typed and not yet saved, apart from the records; empty: nothing is.
    /// Comes back as App::stored_draft at the next start. Never exported.
    virtual void keep_draft(std::string_view text) = 0;
    /// The person accepted the new version that is ready.
    virtual void start_new_version() = 0;
    /// At least `frames` more frames are wanted.
    virtual void wake(int frames) = 0;
};

}  // namespace twoclocks::canvas
