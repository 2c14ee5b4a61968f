#include "ui/floor/run_list.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/wrapped_text.h"
#include "ui/floor/session_words.h"

#include <QAbstractItemView>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using common::Theme;

constexpr double kRunPadding = 12;
constexpr double kRunTop = 10;
constexpr double kTimeWidth = 54;
constexpr double kRunIcon = 16;
constexpr double kNameLine = 20;
constexpr double kNoteLine = 17;
constexpr double kLeastRunName = 64;  ///< with less room beside the time, names go below it

QString iconOf(const RunSlot& slot, bool isRecording)
{
    if (isRecording) {
        return QStringLiteral("edit");
    }
    return slot.isRecorded() ? QStringLiteral("check") : slot.isPrinted() ? QString() : QStringLiteral("print");
}

}  // namespace

void RunModel::setRun(const std::vector<RunSlot>& run, int chosen, bool isChosenOpen)
{
    // A reset in the middle of a click would swallow the click.
    const bool isReset = run.size() != m_run.size();
    if (isReset) {
        beginResetModel();
    }
    m_run = run;
    m_chosen = chosen;
    m_isChosenOpen = isChosenOpen;
    if (isReset) {
        endResetModel();
    } else if (!m_run.empty()) {
        Q_EMIT dataChanged(index(0), index(static_cast<int>(m_run.size()) - 1));
    }
}

QString RunModel::note(int index) const
{
    const RunSlot& one = slot(index);
    if (isRecording(index)) {
        return tr("%1 · recording").arg(one.coach);
    }
    if (one.isRecorded()) {
        return tr("%1 · recorded").arg(one.coach);
    }
    if (!one.isOpen()) {
        const QString absence = absenceText(one.sessions.front().state);
        const bool isOneState = std::all_of(one.sessions.begin(), one.sessions.end(), [&one](const sessions::Session& each) { return each.state == one.sessions.front().state; });
        return isOneState ? tr("%1 · %2").arg(one.coach, absence) : one.isCalledOff() ? tr("%1 · called off").arg(one.coach) : tr("%1 · nobody came").arg(one.coach);
    }
    return one.isPrinted() ? tr("%1 · card printed").arg(one.coach) : one.coach;
}

int RunModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_run.size());
}

QVariant RunModel::data(const QModelIndex& at, int role) const
{
    if (!at.isValid() || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole && role != Qt::ToolTipRole)) {
        return {};
    }
    const RunSlot& one = slot(at.row());
    return tr("%1 %2, %3").arg(common::qstring(sessions::clockText(one.startMinute)), one.names, note(at.row()));
}

RunDelegate::RunDelegate(const common::Look& look, const RunModel& model, QObject* parent) : QStyledItemDelegate(parent), m_look(look), m_model(model) {}

QFont RunDelegate::nameFont(int index) const
{
    return m_look.theme().font(14, m_model.isChosen(index) ? QFont::DemiBold : QFont::Normal);
}

double RunDelegate::nameWidth(double width) const
{
    const double beside = isStacked(width) ? 0 : kTimeWidth + kRunIcon + 6;
    return width - m_look.theme().scaled(2 * kRunPadding + beside);
}

bool RunDelegate::isStacked(double width) const
{
    return width < m_look.theme().scaled(2 * kRunPadding + kTimeWidth + kRunIcon + 6 + kLeastRunName);
}

QSize RunDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const double width = view == nullptr ? option.rect.width() : view->viewport()->width();
    const double line = theme.scaled(kNameLine);
    const double names = common::wrappedTextHeight(m_model.slot(index.row()).names, nameFont(index.row()), nameWidth(width), line);
    const double note = common::wrappedTextHeight(m_model.note(index.row()), theme.font(12, QFont::Normal), nameWidth(width), theme.scaled(kNoteLine));
    const double time = isStacked(width) ? line : 0;
    return {qRound(width), qRound(time + names + note + theme.scaled(2 * kRunTop) + 1)};
}

void RunDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const RunSlot& one = m_model.slot(index.row());
    const bool isChosen = m_model.isChosen(index.row());
    const QRectF row = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (isChosen) {
        painter->fillRect(row, theme.wash);
        painter->fillRect(QRectF(row.left(), row.top(), 3, row.height()), theme.mark);
    } else if ((option.state & QStyle::State_MouseOver) != 0) {
        painter->fillRect(row, theme.hover);
    }
    painter->fillRect(QRectF(row.left(), row.bottom() - 1, row.width(), 1), theme.line);
    const double left = row.left() + theme.scaled(kRunPadding);
    const double top = row.top() + theme.scaled(kRunTop);
    const double line = theme.scaled(kNameLine);
    painter->setFont(theme.font(14, QFont::DemiBold));
    const bool isOver = !one.isOpen() && !m_model.isRecording(index.row());
    painter->setPen(isOver ? theme.ink3 : theme.ink);
    painter->drawText(QRectF(left, top, theme.scaled(kTimeWidth), line), Qt::AlignVCenter, common::qstring(sessions::clockText(one.startMinute)));
    const double x = isStacked(row.width()) ? left : left + theme.scaled(kTimeWidth);
    const double namesTop = isStacked(row.width()) ? top + line : top;
    const double width = nameWidth(row.width());
    painter->setPen(isOver ? theme.ink2 : theme.ink);
    common::paintWrappedText(*painter, {x, namesTop}, one.names, nameFont(index.row()), width, line);
    const double names = common::wrappedTextHeight(one.names, nameFont(index.row()), width, line);
    painter->setPen(theme.ink2);
    common::paintWrappedText(*painter, {x, namesTop + names}, m_model.note(index.row()), theme.font(12, QFont::Normal), width, theme.scaled(kNoteLine));
    const double side = theme.scaled(kRunIcon);
    const QRectF icon(row.right() - theme.scaled(kRunPadding) - side, top + 2, side, side);
    if (const QString name = iconOf(one, m_model.isRecording(index.row())); !name.isEmpty()) {
        common::paintIcon(*painter, icon, name, name == QLatin1String("check") ? theme.ok : theme.ink2, theme);
    }
    if ((option.state & QStyle::State_HasFocus) != 0) {
        painter->setPen(QPen(theme.focus, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(row.adjusted(2, 2, -2, -3), 4, 4);
    }
    painter->restore();
}

}  // namespace chalk::ui::floor
