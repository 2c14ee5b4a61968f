#include "app/commands/opened_backup.h"

#include "app/commands/passphrase_input.h"

namespace chalk::app {

store::Result<store::OpenedCopy> openBackup(const CommandContext& context, const QString& file, store::KeyRing& keys, bool mayAsk)
{
    auto opened = store::OpenedCopy::of(file, keys, {});
    if (opened || opened.error().kind != store::StoreError::Kind::Locked) {
        return opened;
    }
    QString fault;
    auto text = context.passphraseText(fault);
    if (!text && fault.isEmpty() && mayAsk) {
        text = askPassphrase(QStringLiteral("Passphrase of %1").arg(file));
    }
    if (!text) {
        opened.error().message = fault.isEmpty() ? opened.error().message + QStringLiteral("; name a file that holds it by --passphrase-file") : fault;
        return opened;
    }
    const auto wrapped = seal::sealedHeadOf(file);
    if (!wrapped) {
        return tl::make_unexpected(store::errorOfSeal(wrapped.error(), file));
    }
    keys.offer(seal::Passphrase(*text));
    if (const auto ready = keys.open(*wrapped, file); !ready) {
        return tl::make_unexpected(ready.error());
    }
    return store::OpenedCopy::of(file, keys, {});
}

}  // namespace chalk::app
