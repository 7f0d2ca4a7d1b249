#include <fmt/format.h>

#include <string_view>

#include "report/page_data.h"

// The built page, taken into the program by bundle.S.
extern const char sinewright_page_js[], sinewright_page_js_end[], sinewright_page_css[], sinewright_page_css_end[];

namespace sinewright::report {

namespace {

std::string escaped(const std::string& text) {
  std::string safe;
  for (const char c : text) {
    if (c == '&') safe += "&amp;";
    else if (c == '<') safe += "&lt;";
    else if (c == '>') safe += "&gt;";
    else safe += c;
  }
  return safe;
}

}  // namespace

std::string page(const std::string& data, const std::string& title) {
  const std::string_view script(sinewright_page_js, static_cast<std::size_t>(sinewright_page_js_end - sinewright_page_js));
  const std::string_view style(sinewright_page_css, static_cast<std::size_t>(sinewright_page_css_end - sinewright_page_css));
  std::string html =
      "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
      "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data: blob:\">\n"
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" + escaped(title) + "</title>\n<style>\n";
  html += style;
  html += "\n</style>\n</head>\n<body>\n<noscript>This review is drawn by a script inside this file; allow scripts to see it. Design prediction, not certification.</noscript>\n"
          "<main id=\"review\"></main>\n<script type=\"application/json\" id=\"data\">";
  html += data;
  html += "</script>\n<script>\n";
  html += script;
  html += "\n</script>\n</body>\n</html>\n";
  return html;
}

}  // namespace sinewright::report
