package org.fumewarden.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.register.InUse;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.StoreException;

/**
 * The register and log that a server was started with.
 *
 * @param file of the store, which is opened anew for each question, since a store is not for several threads
 * @param clock tells today and the moment at which an entry is written
 */
public record Workshop(Path file, Clock clock) {

    /**
     * A workshop whose store can be read.
     *
     * @throws InputException when it cannot
     */
    public static Workshop at(Path file, Clock clock) {
        Workshop workshop = new Workshop(file, clock);
        workshop.read(Store::head);
        return workshop;
    }

    /** Work on an open store. */
    interface Work<T> {
        T on(Store store);
    }

    <T> T read(Work<T> work) {
        return guarded(() -> Store.read(file), work);
    }

    <T> T write(Work<T> work) {
        return guarded(() -> Store.open(file), work);
    }

    /** The bench with what the register says of the unit, the mask and the wearer of its task. */
    Bench inUse(Bench bench) {
        try {
            return InUse.with(bench, () -> Store.read(file));
        } catch (StoreException e) {
            throw problem(e);
        }
    }

    private static InputException problem(StoreException fault) {
        return new InputException(
                new Problem("store", 0, fault.field(), fault.saying(), fault.remedy(), fault.fault()));
    }

    private static <T> T guarded(java.util.function.Supplier<Store> opening, Work<T> work) {
        try (Store store = opening.get()) {
            return work.on(store);
        } catch (StoreException e) {
            throw problem(e);
        }
    }

    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The duties of the code that the site is registered under, or else of the code that the page stands at. */
    DutyBook duties(Store store, Library library, String otherwise) {
        Optional<String> registered = store.items(Item.Site.class).stream()
                .map(Item.Site::code)
                .filter(library.codes()::contains)
                .findFirst();
        String code = registered.orElse(
                library.codes().contains(otherwise)
                        ? otherwise
                        : library.codes().get(0));
        return DutyBook.of(library.advisor(code).base().book(), today());
    }
}
