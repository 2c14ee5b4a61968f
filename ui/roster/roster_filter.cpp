#include "ui/roster/roster_filter.h"

#include "ui/roster/roster_model.h"

#include <algorithm>

namespace chalk::ui::roster {

namespace {

constexpr qsizetype kLeastInnerLetters = 3;

QStringList typedWords(const QString& text)
{
    return folded(text).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

bool hasWord(const RosterRow& row, const QString& typed)
{
    return std::any_of(row.searchWords.begin(), row.searchWords.end(), [&typed](const QString& word) {
        return typed.size() < kLeastInnerLetters ? word.startsWith(typed) : word.contains(typed);
    });
}

bool hasFlag(const RosterRow& row, checkin::ClientFlag flag)
{
    return std::find(row.flags.begin(), row.flags.end(), flag) != row.flags.end();
}

bool fitsWords(const RosterRow& row, const QStringList& words)
{
    return std::all_of(words.begin(), words.end(), [&row](const QString& word) { return hasWord(row, word); });
}

bool fitsChoices(const RosterRow& row, const RosterCriteria& criteria)
{
    return (!criteria.coach || row.coach == *criteria.coach) && (!criteria.phase || row.phase == *criteria.phase) &&
           (!criteria.isFlagged || row.position.isFlagged) && (!criteria.flag || hasFlag(row, *criteria.flag));
}

}  // namespace

bool fits(const RosterRow& row, const RosterCriteria& criteria)
{
    return fitsChoices(row, criteria) && fitsWords(row, typedWords(criteria.text));
}

int countOf(const std::vector<RosterRow>& rows, const RosterCriteria& criteria)
{
    const QStringList words = typedWords(criteria.text);
    return static_cast<int>(std::count_if(rows.begin(), rows.end(), [&](const RosterRow& row) {
        return fitsChoices(row, criteria) && fitsWords(row, words);
    }));
}

RosterFilter::RosterFilter(QObject* parent) : QSortFilterProxyModel(parent)
{
    sort(0);
}

void RosterFilter::setCriteria(const RosterCriteria& criteria)
{
    if (criteria != m_criteria) {
        m_criteria = criteria;
        m_words = typedWords(criteria.text);
        invalidateFilter();
    }
}

void RosterFilter::setOrder(checkin::RosterOrder order)
{
    if (order != m_order) {
        m_order = order;
        invalidate();
    }
}

bool RosterFilter::filterAcceptsRow(int row, const QModelIndex& parent) const
{
    const RosterRow* line = RosterModel::rowAt(sourceModel()->index(row, 0, parent));
    return line != nullptr && fitsChoices(*line, m_criteria) && fitsWords(*line, m_words);
}

bool RosterFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const
{
    const RosterRow* a = RosterModel::rowAt(left);
    const RosterRow* b = RosterModel::rowAt(right);
    const auto order = checkin::compare(m_order, a->position, b->position);
    if (order != 0) {
        return order < 0;
    }
    return a->name.localeAwareCompare(b->name) < 0;
}

}  // namespace chalk::ui::roster
