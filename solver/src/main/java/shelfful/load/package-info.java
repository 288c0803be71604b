/**
 * The question and the finished answer: what is asked for one firing, and a load that says where
 * everything stands or why it waits. Complete and saveable; nothing in here is checked against the
 * rules of a setting.
 */
package shelfful.load;
