#include "ui/shell/find_parts.h"

#include "ui/common/fuzzy_match.h"

namespace chalk::ui::shell {

std::vector<FindPart> markedParts(const QString& text, const QString& query, FindWeight weight)
{
    const FindWeight bold = isDetail(weight) ? FindWeight::DetailBold : FindWeight::Bold;
    std::vector<FindPart> parts;
    qsizetype from = 0;
    for (const common::MatchSpan& span : common::matchSpans(query, text, common::Typos::Allowed)) {
        if (span.begin > from) {
            parts.push_back({text.mid(from, span.begin - from), weight});
        }
        parts.push_back({text.mid(span.begin, span.length), bold});
        from = span.begin + span.length;
    }
    if (from < text.size()) {
        parts.push_back({text.mid(from), weight});
    }
    return parts;
}

}  // namespace chalk::ui::shell
