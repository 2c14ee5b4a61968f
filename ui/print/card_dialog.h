#pragma once

#include "core/sessions/card_content.h"
#include "ui/common/banner.h"
#include "ui/print/paper.h"

#include <QDate>
#include <QDialog>

#include <functional>
#include <vector>

class QLabel;
class QPrinter;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class Dialogs;
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::print {

class CardPreview;

/// What the dialog works with. All of it outlives the dialog.
struct CardDialogServices {
    const common::Look& look;
    common::Dialogs& dialogs;
    /// Lets the person choose a printer; false where that was called off.
    std::function<bool(QPrinter&, QWidget*)> choosePrinter;
    /// Where one is, the standard print dialog.
    [[nodiscard]] static std::function<bool(QPrinter&, QWidget*)> standardPrinterChoice();
};

/// Cards as they will be printed, sheet by sheet, with the paper to be chosen: they go to a printer or into a PDF. What went wrong
/// is said in it, with the place.
class CardDialog : public QDialog {
    Q_OBJECT

public:
    /// `day` is written into a PDF as its day. `withheld` are the names of those who get no card for want of clearance.
    CardDialog(const CardDialogServices& services, std::vector<sessions::CardContent> cards, const QDate& day, const QStringList& withheld,
               QWidget* parent = nullptr);

    [[nodiscard]] PaperSize paper() const { return m_paper; }
    void setPaper(PaperSize paper);
    /// Shows another sheet, counted over all cards from 0; kept inside them.
    void showSheet(int sheet);
    [[nodiscard]] int sheet() const { return m_sheet; }
    [[nodiscard]] int sheetCount() const;

    void print();
    void save();
    /// Says that the studio could not be read or written.
    void sayFailure(const QString& message);
    /// What is said now; nothing where the banner is away.
    [[nodiscard]] QString saying() const;

Q_SIGNALS:
    /// All cards went to a printer or into a file.
    void cardsMade();

private:
    void build();
    void buildTools(QVBoxLayout& column);
    void say(common::Signal signal, const QString& icon, const QString& lead, const QString& text);
    [[nodiscard]] QString suggestedName() const;

    CardDialogServices m_services;
    std::vector<sessions::CardContent> m_cards;
    QDate m_day;
    QStringList m_withheld;
    PaperSize m_paper;
    int m_sheet = 0;

    CardPreview* m_preview = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_where = nullptr;
    common::SegmentedChoice* m_papers = nullptr;
    common::ActionButton* m_before = nullptr;
    common::ActionButton* m_after = nullptr;
    common::Banner* m_banner = nullptr;
    common::ActionButton* m_print = nullptr;
    common::ActionButton* m_save = nullptr;
};

}  // namespace chalk::ui::print
