#pragma once

#include "core/sessions/card_content.h"
#include "ui/common/banner.h"
#include "ui/print/sheet_layout.h"

#include <QDate>
#include <QDialog>

#include <functional>
#include <vector>

class QCheckBox;
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

class SheetPreview;

/// What the dialog works with. All of it outlives the dialog.
struct CardDialogServices {
    const common::Look& look;
    common::Dialogs& dialogs;
    /// Lets the person choose a printer; false where that was called off.
    std::function<bool(QPrinter&, QWidget*)> choosePrinter;
    /// Where one is, the standard print dialog.
    [[nodiscard]] static std::function<bool(QPrinter&, QWidget*)> standardPrinterChoice();
};

/// Cards as they will be printed, sheet by sheet, with layout, days, paper and names to be chosen: one click sends all of them to a printer or
/// into a PDF. What went wrong is said in it, with the place.
class CardDialog : public QDialog {
    Q_OBJECT

public:
    /// `day` is written into a PDF as its day. `withheld` are the names of those who get no card for want of clearance.
    CardDialog(const CardDialogServices& services, std::vector<sessions::CardContent> cards, const QDate& day, const QStringList& withheld,
               QWidget* parent = nullptr);

    /// What a group shares; the usual stations where nothing is said.
    void setStations(const planning::FloorStations& stations);

    /// Where the cards of the whole week can be had too: read when they are first asked for. The layout of a week takes them by
    /// itself, and says that its numbers are of `today`.
    void offerWeek(base::Date today, std::function<std::vector<sessions::CardContent>()> week);

    /// Makes the sheets of a client's progress report; none where nothing is on record.
    using ReportSheets = std::function<std::vector<Sheet>(PaperSize paper, bool hasInitialsOnly)>;
    /// Where a client's progress report can be had beside the cards: made each time that it is laid out.
    void offerReport(const QString& clientName, ReportSheets report);
    /// Shows the report; nothing where none is offered. A layout of cards leads back.
    void showReport();

    [[nodiscard]] PaperSize paper() const { return paperOf(m_isReport ? SheetLayout::Week : m_request.layout, m_request.family); }
    void setFamily(PaperFamily family);
    void setLayoutOfSheets(SheetLayout layout);
    void setWholeWeek(bool isWhole);
    void setInitialsOnly(bool isOnly);
    /// Whether the cards of the week are what goes on paper now.
    [[nodiscard]] bool isWholeWeek() const;
    /// Shows another sheet, counted over all of them from 0; kept inside them.
    void showSheet(int sheet);
    [[nodiscard]] int sheet() const { return m_sheet; }
    /// What the sheets are laid out from.
    [[nodiscard]] const SheetRequest& request() const { return m_request; }
    [[nodiscard]] int sheetCount() const { return static_cast<int>(m_sheets.size()); }
    [[nodiscard]] const std::vector<Sheet>& sheets() const { return m_sheets; }

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
    void buildChoices(QVBoxLayout& column);
    [[nodiscard]] common::ActionButton* button(const QString& text, const QString& icon, const QString& keys, const std::function<void()>& does);
    void addKeys();
    /// Lays all sheets out anew.
    void layOut();
    /// Says who gets no card and why; nothing where everybody does.
    void sayWhoGetsNone();
    /// What a file is named after a client: `joaquin-ferro`.
    [[nodiscard]] static QString fileWord(QString name);
    [[nodiscard]] const std::vector<sessions::CardContent>& shown();
    [[nodiscard]] QString titleOfSheet();
    void tellCardsMade();
    void say(common::Signal signal, const QString& icon, const QString& lead, const QString& text);
    [[nodiscard]] QString suggestedName();

    CardDialogServices m_services;
    std::vector<sessions::CardContent> m_cards;
    QDate m_day;
    QStringList m_withheld;
    SheetRequest m_request;
    std::function<std::vector<sessions::CardContent>()> m_readWeek;
    std::optional<std::vector<sessions::CardContent>> m_week;
    bool m_isWeekWanted = false;
    QString m_reportOf;  ///< the name of the client whose report is offered
    ReportSheets m_makeReport;
    bool m_isReport = false;
    std::vector<Sheet> m_sheets;
    int m_sheet = 0;

    SheetPreview* m_preview = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_where = nullptr;
    common::SegmentedChoice* m_layouts = nullptr;
    common::SegmentedChoice* m_days = nullptr;
    common::SegmentedChoice* m_papers = nullptr;
    QCheckBox* m_initials = nullptr;
    common::ActionButton* m_before = nullptr;
    common::ActionButton* m_after = nullptr;
    common::Banner* m_banner = nullptr;
    common::ActionButton* m_print = nullptr;
    common::ActionButton* m_save = nullptr;
};

}  // namespace chalk::ui::print
