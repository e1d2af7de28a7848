// The program without its picture: journal, drafts, pages and what is being saved.
//
// One way: intent -> new fact -> commit -> acknowledged -> views -> Screen. Nothing is shown as
// saved
// before the host has said so. Nothing edits state in place.
#pragma once

#include "wasm/app.hpp"
#include "wasm/intent.hpp"
#include "wasm/screen.hpp"

#include <cstdint>
#include <memory>
#include <string_view>

#include "engine/base/region.hpp"

namespace twoclocks::canvas {

class AppState {
  public:
    explicit AppState(Host& host);
    ~AppState();
    AppState(const AppState&) = delete;
    AppState& operator=(const AppState&) = delete;

    void set_region(const base::Region& region);
    /// The text size a person chose. Units: per cent of the usual. Range: 100 to 200.
    [[nodiscard]] std::int32_t text_percent() const;
    /// There is room for the list a page was chosen from beside it.
    void set_two_panes(bool two_panes);
    void set_device(std::string_view device_id);
    void set_setting(std::string_view name, std::string_view value);
    void refresh(const Outside& outside);
    [[nodiscard]] bool stored(StoredKind kind,
                              std::string_view bytes);  // false: a snapshot of no use
    void storage_note(std::string_view code, std::int64_t count);
    void loaded();
    void committed(std::uint32_t token, bool ok, std::string_view reason);
    void stored_draft(std::string_view text);
    void field_text(std::string_view field_id, std::string_view text);
    void field_closed(std::string_view field_id);  // the person left it: what is wrong shows now
    void file_chosen(std::string_view name, std::string_view bytes);
    void lock_told(std::string_view code, std::string_view name);  // as sharing.hpp says
    void online(bool is_online);
    void new_version_ready();
    void other_tab_wrote(std::string_view segment);
    void read_only(bool is_read_only);
    void back();  // the browser's Back: close the sheet, else the page

    void apply(const Intent& intent);
    /// From now on a page that takes long is made over several frames.
    void work_in_slices();
    /// Does one slice of what the page here waits for; true when there was one to do.
    [[nodiscard]] bool work_on();
    /// The page to draw. The reference holds until the next call of any member.
    [[nodiscard]] const Screen& screen();
    [[nodiscard]] const base::Region& region() const;

    void export_now();  // the whole journal as a file, when storage is in trouble

    struct Inside;  // app/inside.hpp

  private:
    std::unique_ptr<Inside> inside_;
};

}  // namespace twoclocks::canvas
