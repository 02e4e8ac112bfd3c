package org.fumewarden.advice;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/** What to compare before signing, worked out when somebody asks: each value is tried with its neighbours, which takes time. */
final class ComparedLater extends AbstractList<ToCompare> {
    private Supplier<List<ToCompare>> values;
    private List<ToCompare> untried;
    private Supplier<List<ToCompare>> writer;
    private List<ToCompare> written;

    /**
     * Says who writes them; once, before anybody asks.
     *
     * @param known what they are, without what another value would change
     * @param worker tries them
     */
    void by(Supplier<List<ToCompare>> known, Supplier<List<ToCompare>> worker) {
        values = known;
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
