import { usePlace } from '../../app/place.ts'
import { OrderForm } from './order-form.tsx'
import { OrderList } from './order-list.tsx'
import { OrderPage } from './order-page.tsx'
import { NEW_ORDER } from './order-places.ts'
import './orders.css'

/** Orders: the promises, one of them, or a new one. */
export function OrdersRoom() {
  const { id, sub } = usePlace()
  if (id === undefined) return <OrderList />
  if (id === NEW_ORDER) return <OrderForm key="new" />
  if (sub === 'change') return <OrderForm key={id} id={id} />
  return <OrderPage key={id} id={id} />
}
