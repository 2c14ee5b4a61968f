#include "ui/shell/find_dialog.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/tags.h"
#include "ui/shell/find_delegate.h"
#include "ui/shell/find_model.h"
#include "ui/shell/find_ranking.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

constexpr double kFindWidth = 640;
constexpr double kFindTop = 84;
constexpr double kFindFieldHeight = 60;
constexpr double kFindFootHeight = 38;
constexpr double kFindEmptyHeight = 72;
constexpr double kFindEdge = 18;

}  // namespace

FindDialog::FindDialog(const common::Look& look, QWidget* window)
    : Overlay(look, window),
      m_model(new FindModel(this)),
      m_field(new QLineEdit(this)),
      m_list(new QListView(this)),
      m_nothing(new QLabel(this))
{
    setAccessibleName(tr("Find or do"));
    m_field->setObjectName(QStringLiteral("findField"));
    m_field->setAccessibleName(tr("A name, a lift, a result or a command"));
    m_field->setPlaceholderText(tr("Find or do"));
    m_field->installEventFilter(this);
    m_list->setObjectName(QStringLiteral("findList"));
    m_list->setAccessibleName(tr("Results"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new FindDelegate(look, this));
    m_list->setFocusPolicy(Qt::NoFocus);
    m_list->setMouseTracking(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_nothing->setAlignment(Qt::AlignCenter);
    m_nothing->setTextFormat(Qt::RichText);
    connect(m_field, &QLineEdit::textChanged, this, &FindDialog::find);
    connect(m_list, &QListView::clicked, this, [this](const QModelIndex& index) { run(index.row()); });
    connect(m_nothing, &QLabel::linkActivated, this, [this] { m_field->setText(m_meant); });
}

FindDialog::~FindDialog() = default;

void FindDialog::addProvider(std::unique_ptr<FindProvider> provider)
{
    m_providers.push_back(std::move(provider));
}

std::vector<const FindProvider*> FindDialog::providers() const
{
    std::vector<const FindProvider*> all;
    for (const auto& provider : m_providers) {
        all.push_back(provider.get());
    }
    return all;
}

void FindDialog::start(const QString& query)
{
    for (const auto& provider : m_providers) {
        provider->prepare();
    }
    m_field->setText(query);
    m_field->selectAll();
    find();
    open();
}

void FindDialog::find()
{
    const QString query = m_field->text().trimmed();  // two spaces begin a note in a result
    m_model->setItems(rankedItems(providers(), query));
    m_list->setCurrentIndex(m_model->index(m_model->resultRow(0, 1), 0));
    showNothing(query.simplified());
    layCard();
    update();
}

void FindDialog::showNothing(const QString& query)
{
    m_meant.clear();
    m_nothing->setVisible(m_model->rowCount() == 0);
    m_list->setVisible(m_model->rowCount() > 0);
    if (m_model->rowCount() > 0) {
        return;
    }
    QString words = query.isEmpty() ? tr("Type a name, a lift, a result or a command.") : tr("Nothing matches “%1”.").arg(query.toHtmlEscaped());
    if (const auto meant = meantName(providers(), query)) {
        m_meant = *meant;
        words += QLatin1Char(' ') + tr("Did you mean %1?").arg(common::linkHtml(QStringLiteral("meant"), m_meant));
    }
    m_nothing->setText(words);
}

int FindDialog::listHeight() const
{
    if (m_model->rowCount() == 0) {
        return qRound(look().theme().scaled(kFindEmptyHeight));
    }
    int wanted = 8;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        wanted += m_list->sizeHintForRow(row);
    }
    const int room = height() - qRound(look().theme().scaled(kFindTop + kFindFieldHeight + kFindFootHeight)) - 60;
    return std::min(wanted, std::max(room, 120));
}

QRect FindDialog::cardRect() const
{
    const common::Theme& theme = look().theme();
    const int width = std::min(qRound(theme.scaled(kFindWidth)), this->width() - 48);
    const int height = qRound(theme.scaled(kFindFieldHeight + kFindFootHeight)) + listHeight();
    return {(this->width() - width) / 2, qRound(theme.scaled(kFindTop)), width, height};
}

void FindDialog::layCard()
{
    const common::Theme& theme = look().theme();
    const QRect card = cardRect();
    const int fieldHeight = qRound(theme.scaled(kFindFieldHeight));
    const int left = card.left() + qRound(theme.scaled(kFindEdge + 32));
    const int capRoom = qRound(theme.scaled(64));
    m_field->setGeometry(left, card.top() + 2, card.right() - left - capRoom, fieldHeight - 4);
    const QRect body(card.left() + 1, card.top() + fieldHeight, card.width() - 2, listHeight());
    m_list->setGeometry(body);
    m_nothing->setGeometry(body.adjusted(qRound(theme.scaled(kFindEdge)), 0, -qRound(theme.scaled(kFindEdge)), 0));
}

QWidget* FindDialog::focusTarget()
{
    return m_field;
}

void FindDialog::moveChoice(int step)
{
    const int row = m_model->resultRow(m_list->currentIndex().row() + step, step);
    if (row >= 0) {
        m_list->setCurrentIndex(m_model->index(row, 0));
        m_list->scrollTo(m_list->currentIndex());
        m_field->setAccessibleDescription(m_list->currentIndex().data().toString());
    }
}

void FindDialog::run(int row)
{
    const FindItem* item = m_model->itemAt(row);
    if (item == nullptr) {
        if (!m_meant.isEmpty()) {
            m_field->setText(m_meant);
        }
        return;
    }
    const auto action = item->run;  // the item goes when the results are read again
    close();
    if (action) {
        action();
    }
}

bool FindDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_field || event->type() != QEvent::KeyPress) {
        return Overlay::eventFilter(watched, event);
    }
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Up:
        moveChoice(-1);
        return true;
    case Qt::Key_Down:
        moveChoice(1);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        run(m_list->currentIndex().row());
        return true;
    case Qt::Key_Escape:
        close();
        return true;
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
        return true;
    }
    return false;
}

void FindDialog::paintEvent(QPaintEvent* event)
{
    Overlay::paintEvent(event);
    const common::Theme& theme = look().theme();
    const QRectF card(cardRect());
    const double fieldHeight = theme.scaled(kFindFieldHeight);
    const double footTop = card.bottom() - theme.scaled(kFindFootHeight);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(card.left() + 1, card.top() + fieldHeight - 1, card.width() - 2, 1), theme.line);
    painter.fillRect(QRectF(card.left() + 1, footTop, card.width() - 2, 1), theme.line);
    const double lens = theme.scaled(22);
    common::paintIcon(painter, QRectF(card.left() + theme.scaled(kFindEdge), card.top() + (fieldHeight - lens) / 2, lens, lens),
                      QStringLiteral("search"), theme.ink, theme);
    const common::KeyCapView escape{tr("Esc")};
    const double escapeWidth = common::keyCapWidth(escape, theme);
    common::paintKeyCap(painter, QRectF(card.right() - theme.scaled(kFindEdge) - escapeWidth, card.top(), escapeWidth + 1, fieldHeight),
                        escape, theme);
    double x = card.left() + theme.scaled(kFindEdge);
    const QRectF foot(0, footTop + 1, card.right(), theme.scaled(kFindFootHeight) - 1);
    for (const QChar arrow : {QChar(0x2191), QChar(0x2193)}) {
        common::paintKeyCap(painter, QRectF(x, foot.top(), 100, foot.height()), {arrow}, theme);
        x += common::keyCapWidth({arrow}, theme) + theme.scaled(4);
    }
    painter.setFont(theme.font(12, QFont::Normal));
    painter.setPen(theme.ink3);
    painter.drawText(QRectF(x + theme.scaled(2), foot.top(), card.right() - x, foot.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("choose     Type a name, a lift, a result or a command"));
}

}  // namespace chalk::ui::shell
