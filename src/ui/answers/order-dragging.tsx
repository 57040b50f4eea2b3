/**
 * Dragging for the form of an order: keys into a place, placed items to another place or back to the keys. A mouse
 * drags at once, a finger after holding, so that the page still scrolls. Taps stay as they are; the keyboard and
 * screen readers use those. What happens is told in our own words, in a region of our own.
 */
import {
  DndContext,
  type DragEndEvent,
  type DragOverEvent,
  MouseSensor,
  pointerWithin,
  TouchSensor,
  type UniqueIdentifier,
  useDraggable,
  useDroppable,
  useSensor,
  useSensors,
} from '@dnd-kit/core';
import { SortableContext, useSortable, verticalListSortingStrategy } from '@dnd-kit/sortable';
import { type CSSProperties, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { FrameProps, KeyProps, KeysProps, OrderParts, PlaceProps } from './order-parts.tsx';

/** Pixels a mouse moves, and milliseconds a finger rests within some pixels, before a tap is a drag. */
const MOUSE_DISTANCE = 6;
const FINGER_DELAY = 250;
const FINGER_TOLERANCE = 8;

const [PLACED, OPEN, KEY, KEYS] = ['placed:', 'open:', 'key:', 'keys'];

const itemOf = (id: UniqueIdentifier): string => String(id).replace(/^(placed|key):/, '');

/** The library keeps a region of its own; nothing is said there, and it stays off the page. */
const ASIDE = document.createElement('div');

const moved = (by: { readonly x: number; readonly y: number } | null): CSSProperties =>
  by ? { transform: `translate3d(${by.x}px, ${by.y}px, 0)` } : {};

function Frame({ order, labelOf, onPut, onTakeOut, say, children }: FrameProps) {
  const [told, setTold] = useState('');
  const sensors = useSensors(
    useSensor(MouseSensor, { activationConstraint: { distance: MOUSE_DISTANCE } }),
    useSensor(TouchSensor, { activationConstraint: { delay: FINGER_DELAY, tolerance: FINGER_TOLERANCE } }),
  );
  /** Where letting go puts it: a place, back among the keys, or nowhere. */
  const targetOf = ({ active, over }: DragOverEvent | DragEndEvent): number | 'keys' | null => {
    if (!over) return null;
    if (over.id === KEYS) return String(active.id).startsWith(PLACED!) ? 'keys' : null;
    const at = order.indexOf(itemOf(over.id));
    const placed = order.includes(itemOf(active.id));
    return at >= 0 ? at : order.length - (placed ? 1 : 0);
  };
  const tell = (key: string, id: UniqueIdentifier, values: Phrase['values'] = {}) =>
    setTold(say(phrase(key, { what: labelOf(itemOf(id)), ...values })));
  const letGo = (event: DragEndEvent) => {
    const target = targetOf(event);
    const { id } = event.active;
    if (target === null) tell('drag.nowhere', id);
    else if (target === 'keys') {
      onTakeOut(itemOf(id));
      tell('drag.taken-back', id);
    } else {
      onPut(itemOf(id), target);
      tell('drag.put', id, { place: target + 1 });
    }
  };
  return (
    <DndContext
      sensors={sensors}
      collisionDetection={pointerWithin}
      accessibility={{ container: ASIDE }}
      onDragStart={({ active }) => tell('drag.lifted', active.id)}
      onDragOver={(event) => {
        const target = targetOf(event);
        if (target === null) tell('drag.over-nothing', event.active.id);
        else if (target === 'keys') tell('drag.over-keys', event.active.id);
        else tell('drag.over-place', event.active.id, { place: target + 1 });
      }}
      onDragEnd={letGo}
      onDragCancel={({ active }) => tell('drag.nowhere', active.id)}
    >
      <SortableContext items={order.map((id) => PLACED + id)} strategy={verticalListSortingStrategy}>
        {children}
      </SortableContext>
      <p className="unseen" aria-live="assertive">
        {told}
      </p>
    </DndContext>
  );
}

function Filled({ taken, className, children }: PlaceProps & { taken: string }) {
  const { setNodeRef, listeners, transform, isDragging, isOver, active } = useSortable({
    id: PLACED + taken,
    transition: null,
    animateLayoutChanges: () => false,
  });
  const isGap = isOver && String(active?.id).startsWith(KEY!);
  return (
    <li
      ref={setNodeRef}
      {...listeners}
      className={`${className} draggable ${isDragging ? 'dragged' : ''} ${isGap ? 'drop-before' : ''}`}
      style={moved(transform)}
    >
      {children}
    </li>
  );
}

function Open({ place, className, children }: PlaceProps) {
  const { setNodeRef, isOver } = useDroppable({ id: OPEN + place });
  return (
    <li ref={setNodeRef} className={`${className} ${isOver ? 'drop-here' : ''}`}>
      {children}
    </li>
  );
}

const Place = (props: PlaceProps) =>
  props.taken === undefined ? <Open {...props} /> : <Filled {...props} taken={props.taken} />;

function Keys({ className, children }: KeysProps) {
  const { setNodeRef } = useDroppable({ id: KEYS! });
  return (
    <fieldset ref={setNodeRef as (node: HTMLFieldSetElement | null) => void} className={className}>
      {children}
    </fieldset>
  );
}

function Key({ id, onPress, children }: KeyProps) {
  const { setNodeRef, listeners, transform, isDragging } = useDraggable({ id: KEY + id });
  return (
    <button
      ref={setNodeRef}
      {...listeners}
      type="button"
      className={`choice slim draggable ${isDragging ? 'dragged' : ''}`}
      style={moved(transform)}
      onClick={onPress}
    >
      {children}
    </button>
  );
}

export const DRAGGED: OrderParts = { Frame, Place, Keys, Key, canDrag: true };
