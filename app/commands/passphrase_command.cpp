#include "app/commands/passphrase_command.h"

#include "app/commands/passphrase_input.h"
#include "app/commands/stop_request.h"
#include "core/store/sealing.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

/// The passphrase that is to be the new one; writes why there is none.
std::optional<seal::Passphrase> newPassphrase(const CommandContext& context)
{
    QString fault;
    std::optional<QString> text;
    if (context.has(QStringLiteral("new-file"))) {
        text = passphraseIn(context.value(QStringLiteral("new-file")), fault);
    } else if ((text = askPassphrase(QStringLiteral("New passphrase")))) {
        const auto again = askPassphrase(QStringLiteral("The same once more"));
        fault = again == text ? QString() : QStringLiteral("the two passphrases differ: nothing was changed");
    } else {
        fault = QStringLiteral("there is no terminal to ask for the new passphrase: name a file by --new-file");
    }
    if (fault.isEmpty() && !store::isLongEnough(*text)) {
        fault = QStringLiteral("a passphrase has %1 characters at least: nothing was changed").arg(seal::Passphrase::kFewest);
    }
    if (!fault.isEmpty()) {
        context.refuse(fault);
        return std::nullopt;
    }
    return seal::Passphrase(*text);
}

int tell(const CommandContext& context, bool isSealed, const QString& words)
{
    if (context.isJson()) {
        context.out << QJsonDocument(QJsonObject{{QStringLiteral("sealed"), isSealed}}).toJson(QJsonDocument::Indented);
    } else {
        context.out << words << '\n';
    }
    return kDone;
}

store::Progress untilItIsStopped()
{
    return [](int, int) { return !StopRequest::isMade(); };
}

int setPassphrase(const CommandContext& context, store::Database& studio)
{
    if (studio.vault().isSealed()) {
        return context.refuse(QStringLiteral("%1 has a passphrase already: --change it").arg(context.studioFile));
    }
    context.err << QStringLiteral("A lost passphrase is a lost studio: nobody can open it without, and there is no way around it.\n"
                                  "Backups made before stay readable to whoever has them.\n");
    context.err.flush();
    const auto passphrase = newPassphrase(context);
    if (!passphrase) {
        return kWrongUse;
    }
    const StopRequest stop;
    const auto set = store::Sealing(studio).set(*passphrase, untilItIsStopped());
    return set ? tell(context, true, QStringLiteral("Sealed. What is about health and what was written about people needs the passphrase now; names, bookings "
                                                    "and loads do not."))
               : context.report(set.error());
}

/// The passphrase that the studio was opened with.
std::optional<seal::Passphrase> presentPassphrase(const CommandContext& context)
{
    QString fault;
    auto text = context.passphraseText(fault);
    if (!text && fault.isEmpty()) {
        text = askPassphrase(QStringLiteral("The present passphrase"));
    }
    if (!text) {
        context.refuse(fault.isEmpty() ? QStringLiteral("the present passphrase is needed: name its file by --passphrase-file") : fault);
        return std::nullopt;
    }
    return seal::Passphrase(*text);
}

int changePassphrase(const CommandContext& context, store::Database& studio, const seal::Passphrase& present)
{
    const auto passphrase = newPassphrase(context);
    if (!passphrase) {
        return kWrongUse;
    }
    const auto changed = store::Sealing(studio).change(present, *passphrase);
    return changed ? tell(context, true, QStringLiteral("Changed. Backups made before keep the former passphrase.")) : context.report(changed.error());
}

int removePassphrase(const CommandContext& context, store::Database& studio, const seal::Passphrase& present)
{
    const StopRequest stop;
    const auto removed = store::Sealing(studio).remove(present, untilItIsStopped());
    return removed ? tell(context, false, QStringLiteral("Removed. Nothing in the studio is sealed any more; sealed backups keep their passphrase."))
                   : context.report(removed.error());
}

int runPassphrase(const CommandContext& context)
{
    const int wishes = int{context.has(QStringLiteral("set"))} + int{context.has(QStringLiteral("change"))} + int{context.has(QStringLiteral("remove"))};
    if (wishes > 1) {
        return context.refuse(QStringLiteral("--set, --change and --remove do not go together"));
    }
    const bool needsPresent = wishes == 1 && !context.has(QStringLiteral("set"));
    const auto present = needsPresent ? presentPassphrase(context) : std::nullopt;
    if (needsPresent && !present) {
        return kWrongUse;
    }
    const auto studio = present ? context.openStudioWith(*present, store::OpenMode::MustExist) : context.openStudio(store::OpenMode::MustExist);
    if (!studio) {
        return context.report(studio.error());
    }
    if (wishes == 0) {
        const bool isSealed = (*studio)->vault().isSealed();
        return tell(context, isSealed, isSealed ? QStringLiteral("%1 is sealed by a passphrase").arg(context.studioFile)
                                                : QStringLiteral("%1 has no passphrase: whoever has the file can read it").arg(context.studioFile));
    }
    if (!needsPresent) {
        return setPassphrase(context, **studio);
    }
    return context.has(QStringLiteral("change")) ? changePassphrase(context, **studio, *present) : removePassphrase(context, **studio, *present);
}

}  // namespace

Command passphraseCommand()
{
    return {QStringLiteral("passphrase"),
            QStringLiteral("seal the studio by a passphrase, change it, or take it away"),
            QString(),
            0,
            0,
            {{QStringLiteral("set"), {}, QStringLiteral("seal what is about health and what was written about people, and all backups from now on")},
             {QStringLiteral("change"), {}, QStringLiteral("put another passphrase in the place of the present one")},
             {QStringLiteral("remove"), {}, QStringLiteral("open everything for good")},
             {QStringLiteral("new-file"), QStringLiteral("FILE"), QStringLiteral("FILE holds the new passphrase in its first line; else it is asked for twice")}},
            QStringLiteral("A lost passphrase is a lost studio: there is no way around it. Names, days of birth, bookings and loads are not sealed: for them encrypt\n"
                           "the disk. Without an option it tells whether the studio is sealed. No other program may have the studio open."),
            runPassphrase};
}

}  // namespace chalk::app
