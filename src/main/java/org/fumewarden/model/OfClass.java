package org.fumewarden.model;

/** What is concluded for or against one class of respirator. */
public interface OfClass {
    /** The class that it is about. */
    String deviceClass();
}
