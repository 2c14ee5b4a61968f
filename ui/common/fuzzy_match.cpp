#include "ui/common/fuzzy_match.h"

#include <QRegularExpression>

#include <algorithm>
#include <limits>
#include <vector>

namespace chalk::ui::common {

namespace {

// What one word of a query adds. A typo never outweighs a match as it was typed.
constexpr int kWholeWord = 100;
constexpr int kBeginning = 80;
constexpr int kInside = 40;
constexpr int kMisspelt = 10;
constexpr int kFirstWord = 5;

/// Letters that Unicode does not take apart.
constexpr struct {
    char16_t letter;
    const char* plain;
} kWholeLetters[] = {{u'ø', "o"},  {u'đ', "d"},  {u'ł', "l"},  {u'ß', "ss"}, {u'æ', "ae"}, {u'œ', "oe"},
                     {u'þ', "th"}, {u'ð', "d"},  {u'ı', "i"},  {u'ħ', "h"},  {u'’', "'"},  {u'×', "x"}};

const QRegularExpression& gap()
{
    static const QRegularExpression expression(QStringLiteral("[\\s,;·/()-]+"));
    return expression;
}

QStringList wordsOf(const QString& folded)
{
    return folded.split(gap(), Qt::SkipEmptyParts);
}

int allowedTypos(const QString& word)
{
    return word.size() >= 7 ? 2 : word.size() >= 4 ? 1 : 0;
}

/// A query word against one word of the text; 0 where they do not fit. A misspelt word may be unfinished: it is held against
/// the beginning of the text's word as well.
int wordScore(const QString& wanted, const QString& word, Typos typos)
{
    if (word == wanted) {
        return kWholeWord;
    }
    if (word.startsWith(wanted)) {
        return kBeginning;
    }
    if (wanted.size() >= 2 && word.contains(wanted)) {
        return kInside;
    }
    const int allowed = allowedTypos(wanted);
    if (typos == Typos::Refused || allowed == 0) {
        return 0;
    }
    const int apart = std::min(lettersApart(wanted, word), lettersApart(wanted, word.left(wanted.size())));
    return apart <= allowed ? kMisspelt : 0;
}

/// The words of a text as they stand in it.
std::vector<MatchSpan> wordSpansOf(const QString& text)
{
    std::vector<MatchSpan> spans;
    qsizetype from = 0;
    const auto close = [&spans, &from](qsizetype end) {
        if (end > from) {
            spans.push_back({from, end - from});
        }
    };
    for (auto gaps = gap().globalMatch(text); gaps.hasNext();) {
        const QRegularExpressionMatch one = gaps.next();
        close(one.capturedStart());
        from = one.capturedEnd();
    }
    close(text.size());
    return spans;
}

/// The part of a word that a query's word fits.
MatchSpan spanWithin(const MatchSpan& word, const QString& folded, const QString& wanted)
{
    const qsizetype at = folded.indexOf(wanted);
    // Where folding changed the number of letters, places in it mean nothing in the text.
    return at < 0 || folded.size() != word.length ? word : MatchSpan{word.begin + at, wanted.size()};
}

/// Puts the spans in order and joins those that touch.
std::vector<MatchSpan> joined(std::vector<MatchSpan> spans)
{
    std::sort(spans.begin(), spans.end(), [](const MatchSpan& a, const MatchSpan& b) { return a.begin < b.begin; });
    std::vector<MatchSpan> apart;
    for (const MatchSpan& span : spans) {
        if (!apart.empty() && span.begin <= apart.back().begin + apart.back().length) {
            apart.back().length = std::max(apart.back().length, span.begin + span.length - apart.back().begin);
        } else {
            apart.push_back(span);
        }
    }
    return apart;
}

}  // namespace

QString foldedText(const QString& text)
{
    QString folded;
    for (const QChar letter : text.normalized(QString::NormalizationForm_KD).toLower()) {
        if (letter.category() == QChar::Mark_NonSpacing) {
            continue;
        }
        const auto* whole = std::find_if(std::begin(kWholeLetters), std::end(kWholeLetters),
                                         [letter](const auto& entry) { return entry.letter == letter.unicode(); });
        if (whole != std::end(kWholeLetters)) {
            folded += QLatin1String(whole->plain);
        } else {
            folded += letter;
        }
    }
    return folded;
}

std::optional<int> matchScore(const QString& query, const QString& text, Typos typos)
{
    const QStringList words = wordsOf(foldedText(text));
    int score = 0;
    for (const QString& wanted : wordsOf(foldedText(query))) {
        int best = 0;
        for (qsizetype i = 0; i < words.size(); ++i) {
            const int one = wordScore(wanted, words.at(i), typos);
            best = std::max(best, one == 0 ? 0 : one + (i == 0 ? kFirstWord : 0));
        }
        if (best == 0) {
            return std::nullopt;
        }
        score += best;
    }
    return score;
}

std::vector<MatchSpan> matchSpans(const QString& query, const QString& text, Typos typos)
{
    const std::vector<MatchSpan> words = wordSpansOf(text);
    std::vector<MatchSpan> spans;
    for (const QString& wanted : wordsOf(foldedText(query))) {
        int best = 0;
        MatchSpan found;
        for (const MatchSpan& word : words) {
            const QString folded = foldedText(text.mid(word.begin, word.length));
            const int score = wordScore(wanted, folded, typos);
            if (score > best) {
                best = score;
                found = spanWithin(word, folded, wanted);
            }
        }
        if (best > 0) {
            spans.push_back(found);
        }
    }
    return joined(std::move(spans));
}

std::optional<qsizetype> probablyMeant(const QString& query, const QStringList& candidates)
{
    const QString wanted = foldedText(query).simplified();
    if (wanted.size() < 3) {
        return std::nullopt;
    }
    std::optional<qsizetype> meant;
    int fewest = static_cast<int>(std::max<qsizetype>(1, wanted.size() / 3)) + 1;  // a third of the letters may be wrong
    for (qsizetype i = 0; i < candidates.size(); ++i) {
        const QString whole = foldedText(candidates.at(i));
        QStringList parts = wordsOf(whole);
        parts.append(whole);
        for (const QString& part : parts) {
            const int apart = std::min(lettersApart(wanted, part), lettersApart(wanted, part.left(wanted.size())));
            if (apart < fewest) {
                fewest = apart;
                meant = i;
            }
        }
    }
    return meant;
}

int lettersApart(const QString& a, const QString& b)
{
    // Optimal string alignment: the rows of two, one and no letters ago.
    const auto width = static_cast<std::size_t>(b.size()) + 1;
    std::vector<int> before(width);
    std::vector<int> last(width);
    std::vector<int> now(width);
    for (std::size_t j = 0; j < width; ++j) {
        last[j] = static_cast<int>(j);
    }
    for (qsizetype i = 1; i <= a.size(); ++i) {
        now[0] = static_cast<int>(i);
        for (qsizetype j = 1; j <= b.size(); ++j) {
            const auto at = static_cast<std::size_t>(j);
            const int wrong = a.at(i - 1) == b.at(j - 1) ? 0 : 1;
            now[at] = std::min({last[at] + 1, now[at - 1] + 1, last[at - 1] + wrong});
            if (i > 1 && j > 1 && a.at(i - 1) == b.at(j - 2) && a.at(i - 2) == b.at(j - 1)) {
                now[at] = std::min(now[at], before[at - 2] + 1);
            }
        }
        before.swap(last);
        last.swap(now);
    }
    return last[width - 1];
}

}  // namespace chalk::ui::common
