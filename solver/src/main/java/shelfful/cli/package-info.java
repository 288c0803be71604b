/** The command line: arguments in, calls out, exit codes. The only user of the standard streams. */
package shelfful.cli;
