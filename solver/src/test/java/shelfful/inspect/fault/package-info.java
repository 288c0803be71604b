/** Plants single faults in valid loads, to see whether the judge finds them. */
package shelfful.inspect.fault;
