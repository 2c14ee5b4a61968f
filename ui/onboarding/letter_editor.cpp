#include "ui/onboarding/letter_editor.h"

#include "ui/common/action_button.h"
#include "ui/common/day_entry.h"
#include "ui/common/dialogs.h"
#include "ui/common/editor_foot.h"
#include "ui/common/look.h"

#include <QFile>
#include <QFileInfo>
#include <QLineEdit>

namespace chalk::ui::onboarding {

namespace {

constexpr double kLetterNameWidth = 88;

}  // namespace

LetterEditor::LetterEditor(const common::Look& look, common::Dialogs& dialogs, QWidget* parent)
    : FieldColumn(look, parent, kLetterNameWidth), m_dialogs(dialogs), m_attach(new common::ActionButton(look, tr("Attach a copy"), this))
{
    const auto field = [this](const QString& name, const QString& hint) {
        auto* line = new QLineEdit(this);
        line->setPlaceholderText(hint);
        addField(name, line);
        connect(line, &QLineEdit::returnPressed, this, &LetterEditor::accept);
        return line;
    };
    addHeading(tr("The doctor’s answer"));
    m_writer = field(tr("Written by"), {});
    m_day = field(tr("On"), {});
    m_until = field(tr("Valid until"), tr("Empty: no end"));
    m_limits = new QLineEdit(this);
    m_limits->setPlaceholderText(tr("If any"));
    addWideField(tr("Limits"), m_limits);
    connect(m_limits, &QLineEdit::returnPressed, this, &LetterEditor::accept);
    addField(tr("Paper"), m_attach);
    connect(m_attach, &QPushButton::clicked, this, &LetterEditor::attach);
    auto* foot = new common::EditorFoot(look, tr("Put on file"), this);
    connect(foot, &common::EditorFoot::keepAsked, this, &LetterEditor::accept);
    connect(foot, &common::EditorFoot::leaveAsked, this, &LetterEditor::left);
    addLine(foot);
}

void LetterEditor::begin(base::Date today)
{
    m_today = today;
    m_fileName.clear();
    m_file.clear();
    for (QLineEdit* line : {m_writer, m_until, m_limits}) {
        line->clear();
        setFault(line, {});
    }
    m_day->setText(common::entryOfDay(today));
    setFault(m_day, {});
    setNote(m_attach, tr("A scan or a photo, up to 10 MB."));
    setFault(m_attach, {});
    m_writer->setFocus(Qt::OtherFocusReason);
}

void LetterEditor::attach()
{
    const auto path = m_dialogs.fileToOpen(window(), {tr("Attach a copy of the letter"), {}, {}, tr("Papers and pictures (*.pdf *.png *.jpg *.jpeg *.tif *.tiff);;All files (*)"), {}});
    if (!path) {
        return;
    }
    QFile file(*path);
    if (file.size() > kMostBytes) {
        setFault(m_attach, tr("%1 is larger than 10 MB. Scan it again with less detail.").arg(QFileInfo(*path).fileName()));
        return;
    }
    if (!file.open(QIODevice::ReadOnly)) {
        setFault(m_attach, tr("%1 cannot be read: %2").arg(QFileInfo(*path).fileName(), file.errorString()));
        return;
    }
    m_file = file.readAll();
    m_fileName = QFileInfo(*path).fileName();
    setFault(m_attach, {});
    setNote(m_attach, tr("Attached: %1").arg(m_fileName));
}

bool LetterEditor::review()
{
    const auto day = common::dayOfEntry(m_day->text());
    const bool hasUntil = !m_until->text().trimmed().isEmpty();
    const auto until = common::dayOfEntry(m_until->text());
    setFault(m_writer, m_writer->text().trimmed().isEmpty() ? tr("Who wrote it?") : QString());
    setFault(m_day, !day ? tr("There is no such day. Write it like 24 Nov 2026.") : *day > m_today ? tr("This day is still to come.") : QString());
    setFault(m_until, hasUntil && !until ? tr("There is no such day. Write it like 24 Nov 2027.") : until && day && *until < *day ? tr("Before the letter’s own day.") : QString());
    const bool isSound = !m_writer->text().trimmed().isEmpty() && day && *day <= m_today && (!hasUntil || (until && *until >= *day));
    return isSound;
}

void LetterEditor::accept()
{
    if (!review()) {
        for (QLineEdit* line : {m_writer, m_day, m_until}) {
            if (line->property("invalid").toBool()) {
                return line->setFocus(Qt::OtherFocusReason);
            }
        }
        return;
    }
    store::Letter letter;
    letter.writtenBy = m_writer->text().trimmed().toStdString();
    letter.day = *common::dayOfEntry(m_day->text());
    letter.validUntil = common::dayOfEntry(m_until->text());
    letter.limits = m_limits->text().trimmed().toStdString();
    letter.fileName = m_fileName.toStdString();
    letter.file = m_file;
    Q_EMIT letterGiven(letter);
}

}  // namespace chalk::ui::onboarding
