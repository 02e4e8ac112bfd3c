package org.fumewarden.advice;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/** What to compare before signing, worked out when somebody asks: each value is tried with its neighbours, which takes time. */
final class ComparedLater extends AbstractList<ToCompare> {
    private final Supplier<List<ToCompare>> values;
    private List<ToCompare> untried;
    private Supplier<List<ToCompare>> writer;
    private List<ToCompare> written;

    /**
     * The values, once somebody asks.
     *
     * @param values what they are, without what another value would change
     */
    ComparedLater(Supplier<List<ToCompare>> values) {
        this.values = values;
    }

    /** Says who tries them; once, before anybody asks. */
    void by(Supplier<List<ToCompare>> worker) {
        writer = worker;
    }

    /** The values, without what another one would change. */
    synchronized List<ToCompare> untried() {
        if (untried == null) {
            untried = values.get();
        }
        return untried;
    }

    private synchronized List<ToCompare> written() {
        if (written == null) {
            written = writer.get();
            writer = null;
        }
        return written;
    }

    @Override
    public ToCompare get(int index) {
        return written().get(index);
    }

    @Override
    public int size() {
        return written().size();
    }
}
