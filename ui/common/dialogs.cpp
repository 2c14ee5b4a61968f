#include "ui/common/dialogs.h"

#include "ui/common/versions_dialog.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

namespace chalk::ui::common {

namespace {

QString startFolder(const FileQuestion& question)
{
    return question.folder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : question.folder;
}

QMessageBox::Icon boxIcon(Signal signal)
{
    switch (signal) {
    case Signal::Pain:
        return QMessageBox::Critical;
    case Signal::Warn:
        return QMessageBox::Warning;
    case Signal::Ok:
    case Signal::Info:
    case Signal::Muted:
        return QMessageBox::Information;
    }
    return QMessageBox::NoIcon;
}

std::optional<QString> chosenPath(const QString& path)
{
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

std::vector<QAbstractButton*> addAnswers(QMessageBox& box, const Question& question)
{
    QStringList answers = question.answers;
    if (answers.isEmpty()) {
        answers.append(QCoreApplication::translate("Dialogs", "Close"));
    }
    std::vector<QAbstractButton*> buttons;
    for (int i = 0; i < answers.size(); ++i) {
        const bool isSafe = i == question.safeAnswer;
        QPushButton* button = box.addButton(answers.at(i), isSafe ? QMessageBox::RejectRole : QMessageBox::AcceptRole);
        buttons.push_back(button);
        if (isSafe) {
            box.setDefaultButton(button);
            box.setEscapeButton(button);
        }
    }
    return buttons;
}

}  // namespace

int ScreenDialogs::ask(QWidget* parent, const Question& question)
{
    if (!question.versions.empty()) {
        VersionsDialog dialog(question, parent);
        dialog.exec();
        return dialog.answer();
    }
    QMessageBox box(boxIcon(question.signal), QStringLiteral("Chalkrung"), question.headline, QMessageBox::NoButton, parent);
    box.setInformativeText(question.text);
    box.setDetailedText(question.details);
    const std::vector<QAbstractButton*> buttons = addAnswers(box, question);
    box.exec();
    for (std::size_t i = 0; i < buttons.size(); ++i) {
        if (buttons[i] == box.clickedButton()) {
            return static_cast<int>(i);
        }
    }
    return question.safeAnswer;
}

std::optional<QString> ScreenDialogs::fileToOpen(QWidget* parent, const FileQuestion& question)
{
    return chosenPath(QFileDialog::getOpenFileName(parent, question.title, startFolder(question), question.filter));
}

std::optional<QString> ScreenDialogs::fileToSave(QWidget* parent, const FileQuestion& question)
{
    QFileDialog dialog(parent, question.title, startFolder(question), question.filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(question.suffix);
    dialog.selectFile(question.suggestion);
    return dialog.exec() == QDialog::Accepted ? chosenPath(dialog.selectedFiles().value(0)) : std::nullopt;
}

std::optional<QString> ScreenDialogs::folder(QWidget* parent, const FileQuestion& question)
{
    return chosenPath(QFileDialog::getExistingDirectory(parent, question.title, startFolder(question)));
}

}  // namespace chalk::ui::common
