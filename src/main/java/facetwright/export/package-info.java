/**
 * Drawings and models as files in open formats.
 *
 * <p>An {@link facetwright.export.Exporter} turns a {@link facetwright.export.Job} into the bytes
 * of one format, the same bytes for the same job; {@link facetwright.export.Exporters} lists them
 * all. {@link facetwright.export.file.WholeFiles} puts a set of files into a folder, all of them or
 * none. Measures in every file are millimetres.
 */
package facetwright.export;
