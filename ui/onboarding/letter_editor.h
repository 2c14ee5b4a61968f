#pragma once

#include "core/store/client_forms.h"
#include "ui/onboarding/field_column.h"

class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class ActionButton;
class Dialogs;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

/// A doctor's answer put on file: who wrote it, when, until when it holds, its limits, a copy of the paper.
class LetterEditor : public FieldColumn {
    Q_OBJECT

public:
    /// The largest copy that is kept.
    static constexpr qint64 kMostBytes = 10 * 1024 * 1024;

    LetterEditor(const common::Look& look, common::Dialogs& dialogs, QWidget* parent = nullptr);

    /// Empty fields, the letter's day being today.
    void begin(base::Date today);

Q_SIGNALS:
    void letterGiven(const chalk::store::Letter& letter);
    void left();

private:
    void accept();
    void attach();
    bool review();

    common::Dialogs& m_dialogs;
    QLineEdit* m_writer;
    QLineEdit* m_day;
    QLineEdit* m_until;
    QLineEdit* m_limits;
    common::ActionButton* m_attach;
    QString m_fileName;
    QByteArray m_file;
    base::Date m_today;
};

}  // namespace chalk::ui::onboarding
