#pragma once

#include "ui/common/theme.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

class QWidget;

namespace chalk::ui::common {

/// What two versions of the same thing say of one field.
struct VersionRow {
    QString field;
    QString yours;
    QString theirs;

    bool operator==(const VersionRow&) const = default;
};

/// Something to be told or asked in a box of its own. Only for what cannot be undone; all else is a banner and an undo.
struct Question {
    Signal signal = Signal::Info;
    QString headline;     ///< what happened or what is asked, one sentence
    QString text;         ///< what is safe and what to do
    QString details;      ///< the words of the system, folded away; may be empty
    QStringList answers;  ///< verb first: `Delete the client`; none means `Close`
    int safeAnswer = 0;   ///< index of the one that changes nothing: Esc, and the focus at the start
    std::vector<VersionRow> versions = {};  ///< where two versions stand against each other: side by side
};

/// A file to be chosen.
struct FileQuestion {
    QString title;       ///< `Save the cards as PDF`
    QString folder;      ///< where to start; empty: the user's documents
    QString suggestion;  ///< a file name; for saving
    QString filter;      ///< `PDF (*.pdf)`
    QString suffix;      ///< added where a name to save has none: `pdf`
};

/// The one way to message boxes and file dialogs, so that a test can answer them.
class Dialogs {
public:
    virtual ~Dialogs() = default;

    /// The index of the answer; the safe one where the box was closed.
    virtual int ask(QWidget* parent, const Question& question) = 0;
    /// Nothing where it was called off. A file to save may exist already: the person was asked.
    virtual std::optional<QString> fileToOpen(QWidget* parent, const FileQuestion& question) = 0;
    virtual std::optional<QString> fileToSave(QWidget* parent, const FileQuestion& question) = 0;
    virtual std::optional<QString> folder(QWidget* parent, const FileQuestion& question) = 0;
};

/// The real ones, on the screen.
class ScreenDialogs final : public Dialogs {
public:
    int ask(QWidget* parent, const Question& question) override;
    std::optional<QString> fileToOpen(QWidget* parent, const FileQuestion& question) override;
    std::optional<QString> fileToSave(QWidget* parent, const FileQuestion& question) override;
    std::optional<QString> folder(QWidget* parent, const FileQuestion& question) override;
};

}  // namespace chalk::ui::common
