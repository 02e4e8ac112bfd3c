package org.fumewarden.spark;

import java.util.Iterator;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.spark.api.java.JavaRDD;
import org.fumewarden.advice.Advisor;
import org.fumewarden.batch.LineAdvisor;
import org.fumewarden.batch.Outcome;
import org.fumewarden.engine.RuleBase;
import scala.Tuple2;

/** Advises on a register that is spread over a cluster: the rules go to the tasks, one worker a process. */
public final class RegisterOnCluster {
    private RegisterOnCluster() {}

    /**
     * One line of JSON a task, in the order of the lines: the same lines that {@code batch} writes, bytes and numbers
     * alike, advice and rejects in one.
     *
     * @param tasks one task a line, none of them blank
     */
    public static JavaRDD<String> advise(JavaRDD<String> tasks) {
        return tasks.zipWithIndex().mapPartitions(RegisterOnCluster::advise);
    }

    private static Iterator<String> advise(Iterator<Tuple2<String, Long>> partition) {
        Iterable<Tuple2<String, Long>> lines = () -> partition;
        Stream<Outcome> outcomes = StreamSupport.stream(lines.spliterator(), false)
                .map(line -> Worker.HERE.answer(line._2() + 1, line._1()));
        return outcomes.map(Outcome::json).iterator();
    }

    /** Made on first use in each process of the cluster, and shared by all partitions that run there. */
    private static final class Worker {
        static final LineAdvisor HERE =
                new LineAdvisor(code -> new Advisor(RuleBase.shipped(code)), Optional.empty(), Optional.empty());
    }
}
