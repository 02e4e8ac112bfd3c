package org.fumewarden.advice;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/** What to compare before signing, worked out when somebody asks: each value is tried with its neighbours, which takes time. */
final class ComparedLater extends AbstractList<ToCompare> {
    private Supplier<List<ToCompare>> writer;
    private List<ToCompare> written;

    /** Says who works it out; once, before anybody asks. */
    void by(Supplier<List<ToCompare>> worker) {
        writer = worker;
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
