// Types shared by the page's modules.

export type Box = [left: number, top: number, width: number, height: number];

export interface FieldRequest {
  id: string;
  label: string;
  text: string;
  kind:
    | 'text'
    | 'note'
    | 'decimal'
    | 'whole'
    | 'date'
    | 'hours'
    | 'money'
    | 'code'
    | 'search'
    | 'secret';
  box: Box;
}

/** One thing on the screen, as wasm/platform/scene.hpp writes it. */
export interface MirrorNode {
  r: string;
  id?: string;
  n?: string;
  v?: string;
  b: Box;
  off?: number;
  l?: number;
  y?: number;
  s?: number;
  p?: number;
  g?: number;
  out?: number;
  /** What is seen of a box that is cut. */
  c?: Box;
  d?: string;
  w?: number;
}

export interface View {
  width: number;
  height: number;
  ratio: number;
  safe_top: number;
  safe_bottom: number;
}

/** What the program asks of the page. */
export interface Handlers {
  commit(token: number, bytes: Uint8Array): void;
  keepSnapshot(bytes: Uint8Array): void;
  handOverFile(name: string, bytes: Uint8Array): void;
  printPaper(name: string, html: string): void;
  lock(locks: boolean, name: string, bytes: Uint8Array, password: string): void;
  chooseFile(): void;
  fetchDemo(): void;
  editField(request: FieldRequest): void;
  closeField(): void;
  mirror(nodes: MirrorNode[]): void;
  announce(text: string): void;
  pushPage(): void;
  goBack(): void;
  keepSetting(name: string, value: string): void;
  keepDraft(text: string): void;
  startNewVersion(): void;
  wake(frames: number): void;
}

/** The compiled program: exports of wasm/platform/browser.cpp. */
export interface Program {
  HEAPU8: Uint8Array;
  _malloc(size: number): number;
  _tc_start(): number;
  _tc_context_restored(): void;
  _tc_frame(time_ms: number): number;
  _tc_font(weight: number, at: number, length: number): number;
  _tc_region(d: number, d_length: number, g: number, g_length: number, order: number): void;
  _tc_device(at: number, length: number): void;
  _tc_setting(n: number, n_length: number, v: number, v_length: number): void;
  _tc_draft(at: number, length: number): void;
  _tc_refresh(today: number, wall_ms: number, a: number, b: number, c: number, d: number): void;
  _tc_stored(kind: number, at: number, length: number): number;
  _tc_storage_note(at: number, length: number, count: number): void;
  _tc_loaded(): void;
  _tc_resize(width: number, height: number, ratio: number, top: number, bottom: number): void;
  _tc_appearance(dark: number, more_contrast: number, less_motion: number): void;
  _tc_pointer(phase: number, id: number, x: number, y: number, time_ms: number, kind: number): void;
  _tc_wheel(x: number, y: number, delta_x: number, delta_y: number): void;
  _tc_key(key: number): void;
  _tc_activate(at: number, length: number): void;
  _tc_focus(at: number, length: number): void;
  _tc_field_text(id: number, id_length: number, at: number, length: number): void;
  _tc_field_closed(at: number, length: number, next: number): void;
  _tc_file_chosen(name: number, name_length: number, at: number, length: number): void;
  _tc_lock_told(code: number, c_length: number, name: number, n_length: number): void;
  _tc_committed(token: number, ok: number, at: number, length: number): void;
  _tc_online(is_online: number): void;
  _tc_new_version_ready(): void;
  _tc_other_tab_wrote(at: number, length: number): void;
  _tc_read_only(is_read_only: number): void;
  _tc_back(): void;
  _tc_export_now(): void;
}
