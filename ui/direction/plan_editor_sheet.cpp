#include "ui/direction/plan_editor_sheet.h"

#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/direction/plan_editor_words.h"

#include <array>

namespace chalk::ui::direction {

namespace {

using chalk::direction::Departure;
using chalk::direction::PlanFigure;
using chalk::direction::WeekKind;

/// The field that is edited in a column of an exposure; nothing for the load, which follows from the share.
std::optional<WorkField> fieldOf(int column)
{
    switch (column) {
    case PlanEditorSheet::SetsColumn: return WorkField::Sets;
    case PlanEditorSheet::RepsColumn: return WorkField::Reps;
    case PlanEditorSheet::ShareColumn: return WorkField::Share;
    case PlanEditorSheet::RestColumn: return WorkField::Rest;
    case PlanEditorSheet::ReserveColumn: return WorkField::Reserve;
    case PlanEditorSheet::PauseColumn: return WorkField::Pause;
    case PlanEditorSheet::TestColumn: return WorkField::Test;
    default: return std::nullopt;
    }
}

bool isMark(int column)
{
    return column == PlanEditorSheet::PauseColumn || column == PlanEditorSheet::TestColumn;
}

/// The column that a figure stands in.
int columnOf(PlanFigure figure)
{
    switch (figure) {
    case PlanFigure::Share: return PlanEditorSheet::ShareColumn;
    case PlanFigure::Reps: return PlanEditorSheet::RepsColumn;
    case PlanFigure::Sets: return PlanEditorSheet::SetsColumn;
    case PlanFigure::Rest: return PlanEditorSheet::RestColumn;
    }
    return PlanEditorSheet::LoadColumn;
}

int workColumn(int section)
{
    return (section - PlanEditorSheet::FirstWorkColumn) % PlanEditorSheet::WorkColumns;
}

}  // namespace

PlanEditorSheet::PlanEditorSheet(PlanEditorModel& model, QObject* parent) : QAbstractTableModel(parent), m_model(model)
{
    follow();
    connect(&model, &PlanEditorModel::changed, this, &PlanEditorSheet::follow);
}

void PlanEditorSheet::setLift(std::optional<std::size_t> lift)
{
    if (m_lift != lift) {
        beginResetModel();
        m_lift = lift;
        m_rows = -1;
        follow();
        endResetModel();
    }
}

void PlanEditorSheet::follow()
{
    const std::size_t lifts = m_model.wishes().lifts.size();
    if (m_lift && *m_lift >= lifts) {
        m_lift = 0;
    }
    const int rows = static_cast<int>(m_model.plan().plan.weeks.size() * (m_lift ? 1 : lifts));
    const int columns = FirstWorkColumn + m_model.exposures(m_lift) * WorkColumns;
    if (rows == m_rows && columns == m_columns && lifts == m_lifts) {
        Q_EMIT dataChanged(index(0, 0), index(m_rows - 1, m_columns - 1));
        Q_EMIT headerDataChanged(Qt::Vertical, 0, m_rows - 1);
        return;
    }
    const bool isSeen = m_rows >= 0;  // else a reset is under way
    if (isSeen) {
        beginResetModel();
    }
    m_rows = rows;
    m_columns = columns;
    m_lifts = lifts;
    if (isSeen) {
        endResetModel();
    }
}

std::size_t PlanEditorSheet::weekOf(int row) const
{
    return m_lift ? static_cast<std::size_t>(row) : static_cast<std::size_t>(row) / m_lifts;
}

std::size_t PlanEditorSheet::liftOf(int row) const
{
    return m_lift ? *m_lift : static_cast<std::size_t>(row) % m_lifts;
}

WorkPlace PlanEditorSheet::placeOf(const QModelIndex& index) const
{
    return {weekOf(index.row()), liftOf(index.row()), static_cast<std::size_t>((index.column() - FirstWorkColumn) / WorkColumns)};
}

QString PlanEditorSheet::refusalOf(const QModelIndex& index, const QString& text) const
{
    const auto field = index.column() < FirstWorkColumn ? std::nullopt : fieldOf(workColumn(index.column()));
    if (!field) {
        return editFaultText(EditFault::NotThere);
    }
    const EditedPlan edited = withEdit(m_model.plan(), placeOf(index), typedEdit(*field, text), m_model.facts().today);
    return edited ? QString() : editFaultText(edited.error());
}

void PlanEditorSheet::tell(const std::optional<EditFault>& fault)
{
    if (fault) {
        Q_EMIT refused(editFaultText(*fault));
    }
}

void PlanEditorSheet::toggleKind(int row)
{
    const std::size_t week = weekOf(row);
    tell(m_model.setKind(week, m_model.plan().plan.weeks[week].kind == WeekKind::Work ? WeekKind::Lighter : WeekKind::Work));
}

void PlanEditorSheet::copyDown(int row)
{
    tell(m_model.copyDown(weekOf(row), liftOf(row)));
}

int PlanEditorSheet::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : m_rows;
}

int PlanEditorSheet::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : m_columns;
}

QString PlanEditorSheet::workText(const WorkPlace& place, int column) const
{
    const auto* work = m_model.workAt(place);
    if (work == nullptr) {
        return {};
    }
    if (column != LoadColumn) {
        return cellText(*work, *fieldOf(column));
    }
    const auto load = m_model.loadAt(place);
    if (work->isTest || !load) {
        return work->isTest ? tr("test") : QStringLiteral("–");
    }
    return m_lift ? common::numberText(*load) : QStringLiteral("%1 %2").arg(common::numberText(*load), common::unitText(m_model.unitOf(place.lift)));
}

QString PlanEditorSheet::textOf(const QModelIndex& index) const
{
    const auto& week = m_model.plan().plan.weeks[weekOf(index.row())];
    switch (index.column()) {
    case PhaseColumn: return common::phaseName(week.phase);
    case KindColumn: return common::weekKindName(week.kind);
    default: return workText(placeOf(index), workColumn(index.column()));
    }
}

std::vector<Departure> PlanEditorSheet::outsideOf(const QModelIndex& index) const
{
    if (index.column() < FirstWorkColumn) {
        return {};
    }
    std::vector<Departure> found = m_model.departuresAt(placeOf(index));
    const int column = workColumn(index.column());
    found.erase(std::remove_if(found.begin(), found.end(), [column](const Departure& one) { return columnOf(one.figure) != column; }), found.end());
    return found;
}

QString PlanEditorSheet::remarkOf(const QModelIndex& index) const
{
    QStringList remarks;
    for (const Departure& departure : outsideOf(index)) {
        remarks.append(common::departureText(departure));
    }
    if (m_model.isOver(weekOf(index.row()))) {
        remarks.append(editFaultText(EditFault::WeekIsOver));
    }
    if (index.column() >= FirstWorkColumn && workColumn(index.column()) == LoadColumn && !m_model.loadAt(placeOf(index)) &&
        m_model.plan().singles[liftOf(index.row())].load <= base::Load()) {
        remarks.append(tr("No single is known: the lift stays on the ladder until there is one."));
    }
    return remarks.join(QLatin1Char('\n'));
}

QString PlanEditorSheet::spokenOf(const QModelIndex& index) const
{
    const QVariant mark = markOf(index);
    const QString text = mark.isValid() ? (mark.toInt() == Qt::Checked ? tr("yes") : tr("no")) : textOf(index);
    const QString head = headerData(index.column(), Qt::Horizontal, Qt::AccessibleTextRole).toString();
    const QString remark = remarkOf(index);
    return remark.isEmpty() ? QStringLiteral("%1 %2").arg(head, text) : QStringLiteral("%1 %2. %3").arg(head, text, remark);
}

QVariant PlanEditorSheet::markOf(const QModelIndex& index) const
{
    const auto* work = index.column() < FirstWorkColumn ? nullptr : m_model.workAt(placeOf(index));
    if (work == nullptr || !isMark(workColumn(index.column()))) {
        return {};
    }
    return (workColumn(index.column()) == PauseColumn ? work->isPauseAsked : work->isTest) ? Qt::Checked : Qt::Unchecked;
}

QVariant PlanEditorSheet::data(const QModelIndex& index, int role) const
{
    if (!index.isValid()) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole: return textOf(index);
    case Qt::CheckStateRole: return markOf(index);
    case Qt::ToolTipRole:
    case Qt::StatusTipRole: return remarkOf(index);
    case Qt::AccessibleTextRole: return spokenOf(index);
    case Qt::TextAlignmentRole: return QVariant::fromValue(Qt::AlignVCenter | (index.column() < FirstWorkColumn ? Qt::AlignLeft : Qt::AlignRight));
    case IsOutsideRole: return !outsideOf(index).empty();
    case IsFirstRole: return index.column() >= FirstWorkColumn && workColumn(index.column()) == SetsColumn;
    case IsOverRole: return m_model.isOver(weekOf(index.row()));
    default: return {};
    }
}

QVariant PlanEditorSheet::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(Qt::AlignVCenter | (orientation == Qt::Vertical || section < FirstWorkColumn ? Qt::AlignLeft : Qt::AlignRight));
    }
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) {
        return {};
    }
    if (orientation == Qt::Vertical) {
        const std::size_t week = weekOf(section);
        const QString text = QStringLiteral("%1  %2").arg(week + 1).arg(common::shortDayText(m_model.plan().plan.weeks[week].monday));
        return m_lift ? text : QStringLiteral("%1  %2").arg(text, m_model.nameOf(liftOf(section)));
    }
    if (section < FirstWorkColumn) {
        return section == PhaseColumn ? tr("Phase") : tr("Kind");
    }
    const std::array names{tr("Sets"), tr("Reps"), tr("%"), m_lift ? common::unitText(m_model.unitOf(*m_lift)) : tr("Load"), tr("Rest"), tr("Left"), tr("Pause"), tr("Test")};
    const int column = workColumn(section);
    const QString day = tr("Day %1").arg((section - FirstWorkColumn) / WorkColumns + 1);
    const QString& name = names[static_cast<std::size_t>(column)];
    if (role == Qt::AccessibleTextRole) {
        return QStringLiteral("%1, %2").arg(day, name);
    }
    return QStringLiteral("%1\n%2").arg(column == SetsColumn ? day : QString(), name);
}

Qt::ItemFlags PlanEditorSheet::flags(const QModelIndex& index) const
{
    if (!index.isValid()) {
        return {};
    }
    const Qt::ItemFlags seen = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (index.column() < FirstWorkColumn || m_model.isOver(weekOf(index.row())) || m_model.workAt(placeOf(index)) == nullptr) {
        return seen;
    }
    const int column = workColumn(index.column());
    return column == LoadColumn ? seen : seen | (isMark(column) ? Qt::ItemIsUserCheckable : Qt::ItemIsEditable);
}

bool PlanEditorSheet::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const auto field = index.column() < FirstWorkColumn ? std::nullopt : fieldOf(workColumn(index.column()));
    if (!field || (role != Qt::EditRole && role != Qt::CheckStateRole)) {
        return false;
    }
    const WorkEdit edit = role == Qt::CheckStateRole ? WorkEdit{*field, value.toInt() == Qt::Checked ? 1 : 0} : typedEdit(*field, value.toString());
    const auto fault = m_model.setWork(placeOf(index), edit);
    tell(fault);
    return !fault;
}

}  // namespace chalk::ui::direction
